export const pitch = () => Math.random() * 12
