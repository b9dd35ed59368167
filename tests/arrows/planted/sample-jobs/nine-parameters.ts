type Nine = [number, number, number, number, number, number, number, number, number]

export const first = (a: number, b: number, c: number, d: number, e: number, f: number, g: number, h: number, i: number) =>
  [a, b, c, d, e, f, g, h, i] satisfies Nine
