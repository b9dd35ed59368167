export const photo: any = 1
