/** Where the sun stands: the NOAA solar calculation (Meeus, low precision), geometric, good to about 0.01 degree. */

const rad = Math.PI / 180

/**
 * @param {number} instantMs milliseconds since 1970, UTC
 * @param {{ latDeg: number, lonDeg: number }} place
 * @returns {{ elevationDeg: number, azimuthDeg: number }} azimuth clockwise from true north
 */
export function sunPosition(instantMs, place) {
  const t = (instantMs / 86_400_000 + 2440587.5 - 2451545) / 36525
  const meanLong = (280.46646 + t * (36000.76983 + 0.0003032 * t)) % 360
  const anomaly = (357.52911 + t * (35999.05029 - 0.0001537 * t)) * rad
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t)
  const centre =
    Math.sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    Math.sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
    Math.sin(3 * anomaly) * 0.000289
  const omega = (125.04 - 1934.136 * t) * rad
  const apparentLong = (meanLong + centre - 0.00569 - 0.00478 * Math.sin(omega)) * rad
  const obliquity =
    (23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))) / 60) / 60 + 0.00256 * Math.cos(omega)) * rad
  const declination = Math.asin(Math.sin(obliquity) * Math.sin(apparentLong))
  const y = Math.tan(obliquity / 2) ** 2
  const l0 = meanLong * rad
  const equationMin =
    (4 / rad) *
    (y * Math.sin(2 * l0) -
      2 * eccentricity * Math.sin(anomaly) +
      4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * l0) -
      0.5 * y * y * Math.sin(4 * l0) -
      1.25 * eccentricity ** 2 * Math.sin(2 * anomaly))
  const utcMin = (instantMs % 86_400_000) / 60_000
  const hourAngle = ((utcMin + equationMin + 4 * place.lonDeg) / 4 - 180) * rad
  const lat = place.latDeg * rad
  const elevation = Math.asin(
    Math.sin(lat) * Math.sin(declination) + Math.cos(lat) * Math.cos(declination) * Math.cos(hourAngle),
  )
  const azimuth = Math.atan2(
    Math.sin(hourAngle),
    Math.cos(hourAngle) * Math.sin(lat) - Math.tan(declination) * Math.cos(lat),
  )
  return { elevationDeg: elevation / rad, azimuthDeg: (((azimuth / rad + 180) % 360) + 360) % 360 }
}
