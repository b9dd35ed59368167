/** The two invented cameras of the inspection. */

/** @typedef {'phone' | 'compact'} CameraName */

export const CAMERAS = {
  phone: {
    make: 'Tarnholm',
    model: 'Tarnholm P5',
    serial: 'TP5-20431187',
    width: 1600,
    height: 1200,
    longFovDeg: 66,
    focalMm: '42/10',
    fNumber: '18/10',
    iso: 50,
    exposure: '1/1250',
    apertureFt: 0.0035,
    grain: 0.017,
    vignette: 0.32,
    sharpen: 0.34,
    balance: [1.0, 1.0, 1.0],
    /** Added to what its clock says to get the true time. */
    correctionMs: 0,
    clockWhy: 'Set by the network; taken as right.',
  },
  compact: {
    make: 'Ostervik',
    model: 'Ostervik C210',
    serial: '0007714',
    width: 1620,
    height: 1080,
    longFovDeg: 56,
    focalMm: '84/10',
    fNumber: '40/10',
    iso: 125,
    exposure: '1/500',
    apertureFt: 0.0055,
    grain: 0.021,
    vignette: 0.45,
    sharpen: 0.26,
    balance: [1.035, 1.0, 0.955],
    correctionMs: 420_000,
    clockWhy:
      'This camera photographed the phone clock at 09:46:12; its own clock said 09:39:12, so it ran 7 minutes slow. The phone clock is set by the network.',
  },
}
/** What the phone's clock shows in the photo of it. */
export const CLOCK_SHOWS = { time: '09:46:12', date: 'Thu 12 Nov 2026' }
