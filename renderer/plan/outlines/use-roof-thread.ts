import { useEffect, useRef, useState } from 'react'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import type { DrawnRoof } from './drawn-roof.ts'
import type { HouseAround } from './roof-preview.ts'
import type { RoofAnswered, RoofAsked } from './roof-worker.ts'

/**
 * The roof over an outline, worked out on a thread of its own so that frames need not wait for it. While it works, only
 * the newest outline is kept for it. Null until the first roof is there, and without an outline.
 */
export function useRoofThread(outline: HouseOutline | null, around: HouseAround): DrawnRoof | null {
  const [roof, setRoof] = useState<DrawnRoof | null>(null)
  const thread = useRef<RoofThread | null>(null)
  useEffect(() => {
    if (outline === null) {
      setRoof(null)
      return
    }
    thread.current ??= roofThread(setRoof)
    thread.current.ask(outline, around)
  }, [outline, around])
  useEffect(
    () => () => {
      thread.current?.end()
      thread.current = null
    },
    [],
  )
  return outline === null ? null : roof
}

interface RoofThread {
  ask(outline: HouseOutline, around: HouseAround): void
  end(): void
}

function roofThread(onRoof: (roof: DrawnRoof) => void): RoofThread {
  const worker = new Worker(new URL('roof-worker.ts', import.meta.url), { type: 'module' })
  let asked = 0
  let answered = 0
  let waiting: { readonly outline: HouseOutline; readonly around: HouseAround } | null = null
  let told: HouseAround | null = null
  const send = (outline: HouseOutline, around: HouseAround) => {
    asked += 1
    worker.postMessage({ number: asked, outline, around: around === told ? null : around } satisfies RoofAsked)
    told = around
  }
  worker.addEventListener('message', ({ data }: MessageEvent<RoofAnswered>) => {
    answered = data.number
    if (waiting !== null) send(waiting.outline, waiting.around)
    waiting = null
    onRoof(data.roof)
  })
  return {
    ask(outline, around) {
      if (asked === answered) send(outline, around)
      else waiting = { outline, around }
    },
    end: () => worker.terminate(),
  }
}
