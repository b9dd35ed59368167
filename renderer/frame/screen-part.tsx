import { type ComponentType, type FunctionComponent, lazy, useState } from 'react'

/** A component whose code is fetched when it is first shown, or earlier on request. */
export interface ScreenPart<Props> extends FunctionComponent<Props> {
  /** Fetches the code now, so that showing it needs no wait. A failure is told when the part is shown and fetched again. */
  readonly fetchAhead: () => Promise<void>
}

/**
 * Makes a part of the screen of its own file of code. Where that code is there before the part is shown, the part is
 * drawn at once: a plain `lazy` would show its fallback first, after which React holds back what follows for 300 ms.
 */
export function screenPart<Props extends object>(load: () => Promise<ComponentType<Props>>): ScreenPart<Props> {
  let ready: ComponentType<Props> | null = null
  let coming: Promise<ComponentType<Props>> | null = null
  const fetchOnce = () => {
    coming ??= load().then(
      (loaded) => (ready = loaded),
      (cause: unknown) => {
        coming = null
        throw cause
      },
    )
    return coming
  }
  const Late: FunctionComponent<Props> = lazy(async () => ({ default: await fetchOnce() }))
  function Part(props: Props) {
    // What was chosen first stays: another component in its place would lose the state below.
    const [Chosen] = useState<ComponentType<Props>>(() => ready ?? Late)
    return <Chosen {...props} />
  }
  const nothing = () => undefined
  return Object.assign(Part, { fetchAhead: () => fetchOnce().then(nothing, nothing) })
}
