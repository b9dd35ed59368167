import { type RefObject, useCallback, useEffect, useRef, useState } from 'react'

/** How a video stands: what is on the screen now, and what can be done with it. */
export interface Playing {
  /** How far into the video the frame on the screen is, milliseconds. */
  readonly atMs: number
  readonly isPlaying: boolean
  readonly speed: number
  readonly state: 'loading' | 'ready' | 'unplayable'
  readonly play: () => void
  readonly pause: () => void
  readonly toggle: () => void
  readonly seek: (ms: number) => void
  /** One frame on (1) or back (-1). */
  readonly step: (frames: number) => void
  readonly setSpeed: (speed: number) => void
}

/** A frame's length where the file does not tell its rate. */
const USUAL_FRAME_S = 1 / 30
/** A seek aims a little behind a frame's beginning, so that rounding can't give the frame before it. */
const PAST_BEGINNING_S = 0.001

/** Plays a `video` element, exact to the frame where the browser tells which frame it shows. */
export function usePlaying(
  element: RefObject<HTMLVideoElement | null>,
  { framesPerSecond, address }: { framesPerSecond: number | null; address: string },
): Playing {
  const [atMs, setAtMs] = useState(0)
  const [isPlaying, setPlaying] = useState(false)
  const [speed, setSpeed] = useState(1)
  const [state, setState] = useState<Playing['state']>('loading')
  const frameS = framesPerSecond === null ? USUAL_FRAME_S : 1 / framesPerSecond
  const shownS = useShownFrame(element, { address, onFrame: setAtMs })
  useEffect(() => {
    setState('loading')
    setAtMs(0)
    return watch(element.current, { onPlaying: setPlaying, onState: setState })
  }, [element, address])
  useEffect(() => {
    if (element.current !== null) element.current.playbackRate = speed
  }, [element, speed, state])
  const seek = useCallback(
    (ms: number) => {
      const video = element.current
      if (video !== null) video.currentTime = Math.min(Math.max(ms / 1000, 0), video.duration || 0)
    },
    [element],
  )
  const pause = () => element.current?.pause()
  // A player that refuses tells so by its error event as well.
  const play = () => void element.current?.play().catch(() => undefined)
  return {
    atMs,
    isPlaying,
    speed,
    state,
    seek,
    pause,
    play,
    setSpeed,
    toggle: () => (isPlaying ? pause() : play()),
    step: (frames) => {
      pause()
      seek((shownS.current + frames * frameS + PAST_BEGINNING_S) * 1000)
    },
  }
}

/** When the frame on the screen begins, kept up to date; seconds. */
function useShownFrame(
  element: RefObject<HTMLVideoElement | null>,
  { address, onFrame }: { address: string; onFrame: (ms: number) => void },
): RefObject<number> {
  const shownS = useRef(0)
  useEffect(() => {
    const video = element.current
    if (video === null) return undefined
    let handle = 0
    const onShown: VideoFrameRequestCallback = (_now, { mediaTime }) => {
      shownS.current = mediaTime
      onFrame(Math.round(mediaTime * 1000))
      handle = video.requestVideoFrameCallback(onShown)
    }
    handle = video.requestVideoFrameCallback(onShown)
    return () => video.cancelVideoFrameCallback(handle)
  }, [element, address, onFrame])
  return shownS
}

function watch(
  video: HTMLVideoElement | null,
  on: { onPlaying: (isPlaying: boolean) => void; onState: (state: Playing['state']) => void },
): () => void {
  if (video === null) return () => undefined
  const listeners: Readonly<Record<string, () => void>> = {
    play: () => on.onPlaying(true),
    pause: () => on.onPlaying(false),
    ended: () => on.onPlaying(false),
    error: () => on.onState('unplayable'),
    // Sound alone is decoded where the picture's coding is not known.
    loadeddata: () => on.onState(video.videoWidth > 0 ? 'ready' : 'unplayable'),
  }
  for (const [name, listener] of Object.entries(listeners)) video.addEventListener(name, listener)
  if (video.error !== null) on.onState('unplayable')
  else if (video.readyState >= video.HAVE_CURRENT_DATA) listeners['loadeddata']?.()
  return () => {
    for (const [name, listener] of Object.entries(listeners)) video.removeEventListener(name, listener)
  }
}
