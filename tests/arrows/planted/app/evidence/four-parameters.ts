export const sum = (a: number, b: number, c: number, d: number) => a + b + c + d
