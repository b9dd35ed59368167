/** How long a screen may take to follow, however busy the machine is, milliseconds. */
export const patienceMs = 45_000

/** For `expect.poll`: reads what will soon be on the screen again and again, until it fits. */
export const soon = { timeout: patienceMs, interval: 30 } as const
