export function tried(work: () => void): void {
  try {
    work()
  } catch {}
}
