/** Feet as feet and inches to the nearest inch, short, for a drawing: 14.5 is "14′ 6″", 11.99 is "12′ 0″". */
export function shortLength(lengthFt: number): string {
  const inches = Math.round(lengthFt * 12)
  return `${Math.floor(inches / 12)}′ ${inches % 12}″`
}
