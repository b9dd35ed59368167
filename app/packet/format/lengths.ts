/** Feet as feet and inches to the nearest inch: 14.5 is "14 ft 6 in", 11.99 is "12 ft 0 in". */
export function feetInches(lengthFt: number): string {
  const inches = Math.round(lengthFt * 12)
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`
}

/** Feet to a tenth: "18.4". */
export function feetFigure(lengthFt: number): string {
  return lengthFt.toFixed(1)
}
