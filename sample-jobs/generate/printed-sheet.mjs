/** The printed things in the pictures, drawn on one canvas: a 12-inch scale, a clock face on a phone, a force dial. */
import * as THREE from 'three'

/** Where each print lies on the sheet: u0, v0, u1, v1 with v upwards. */
export const PRINTS = {
  scale: [0, 0.9, 1, 1],
  clock: [0, 0, 0.24, 0.88],
  dial: [0.26, 0.2, 0.76, 0.88],
}

/** @param {{ clockTime: string, clockDate: string, forceLbf: number }} words @param {number} anisotropy */
export function printedSheet(words, anisotropy) {
  const canvas = document.createElement('canvas')
  canvas.width = 2048
  canvas.height = 1536
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'))
  pen.fillStyle = '#888'
  pen.fillRect(0, 0, 2048, 1536)
  drawScale(pen)
  drawClock(pen, words)
  drawDial(pen, words.forceLbf)
  const texture = new THREE.CanvasTexture(canvas)
  texture.colorSpace = THREE.SRGBColorSpace
  texture.anisotropy = anisotropy
  return texture
}

/** @param {CanvasRenderingContext2D} pen twelve inches over 2048 px less margins */
function drawScale(pen) {
  pen.fillStyle = '#f4f2ea'
  pen.fillRect(0, 0, 2048, 154)
  pen.fillStyle = '#111'
  pen.font = 'bold 62px sans-serif'
  pen.textAlign = 'center'
  const inch = 2048 / 12.6
  for (let k = 0; k <= 12 * 8; k++) {
    const x = inch * (0.3 + k / 8)
    const length = k % 8 === 0 ? 74 : k % 4 === 0 ? 52 : k % 2 === 0 ? 36 : 22
    pen.fillRect(x - (k % 8 === 0 ? 3 : 1.6), 0, k % 8 === 0 ? 6 : 3.2, length)
    if (k % 8 === 0) pen.fillText(String(k / 8), Math.min(2010, Math.max(38, x)), 138)
  }
  for (let k = 0; k < 12; k += 2) pen.fillRect(inch * (0.3 + k), 146, inch, 8)
  pen.font = '30px sans-serif'
  pen.fillText('INCH', inch * 0.8 + 8, 120)
}

/** @param {CanvasRenderingContext2D} pen @param {{ clockTime: string, clockDate: string }} words */
function drawClock(pen, { clockTime, clockDate }) {
  const [w, top, h] = [492, 1536 - 1352, 1352]
  const fill = pen.createLinearGradient(0, top, 0, top + h)
  fill.addColorStop(0, '#10202e')
  fill.addColorStop(1, '#23485a')
  pen.fillStyle = fill
  pen.fillRect(0, top, w, h)
  pen.fillStyle = '#fff'
  pen.textAlign = 'center'
  pen.font = '42px sans-serif'
  pen.fillText(clockDate, w / 2, top + 260)
  pen.font = 'bold 88px sans-serif'
  pen.fillText(clockTime, w / 2, top + 390)
  pen.font = '30px sans-serif'
  pen.fillText('local time, set by network', w / 2, top + 470)
  pen.lineWidth = 10
  pen.strokeStyle = '#cfe3ea'
  pen.beginPath()
  pen.arc(w / 2, top + 860, 190, 0, 2 * Math.PI)
  pen.stroke()
  const [hour, minute, second] = clockTime.split(':').map(Number)
  const hand = (/** @type {number} */ turn, /** @type {number} */ length, /** @type {number} */ width) => {
    pen.lineWidth = width
    pen.beginPath()
    pen.moveTo(w / 2, top + 860)
    pen.lineTo(w / 2 + length * Math.sin(turn * 2 * Math.PI), top + 860 - length * Math.cos(turn * 2 * Math.PI))
    pen.stroke()
  }
  hand(((hour % 12) + minute / 60) / 12, 100, 14)
  hand((minute + second / 60) / 60, 150, 9)
  hand(second / 60, 165, 4)
}

/** @param {CanvasRenderingContext2D} pen @param {number} forceLbf */
function drawDial(pen, forceLbf) {
  const [cx, cy, r] = [532 + 512, 184 + 522, 470]
  pen.fillStyle = '#e9e7df'
  pen.fillRect(532, 184, 1024, 1044)
  pen.beginPath()
  pen.arc(cx, cy, r, 0, 2 * Math.PI)
  pen.fillStyle = '#fbfaf4'
  pen.fill()
  pen.lineWidth = 16
  pen.strokeStyle = '#222'
  pen.stroke()
  pen.textAlign = 'center'
  pen.fillStyle = '#111'
  const turn = (/** @type {number} */ lbf) => ((lbf / 50) * 270 - 135) * (Math.PI / 180)
  for (let k = 0; k <= 50; k++) {
    const a = turn(k)
    const inner = k % 10 === 0 ? 0.78 : k % 5 === 0 ? 0.84 : 0.89
    pen.lineWidth = k % 10 === 0 ? 12 : 5
    pen.beginPath()
    pen.moveTo(cx + r * inner * Math.sin(a), cy - r * inner * Math.cos(a))
    pen.lineTo(cx + r * 0.95 * Math.sin(a), cy - r * 0.95 * Math.cos(a))
    pen.stroke()
    if (k % 10 === 0) {
      pen.font = 'bold 92px sans-serif'
      pen.fillText(String(k), cx + r * 0.62 * Math.sin(a), cy - r * 0.62 * Math.cos(a) + 32)
    }
  }
  pen.font = 'bold 64px sans-serif'
  pen.fillText('lbf', cx, cy + 210)
  const a = turn(forceLbf)
  pen.strokeStyle = '#b3261e'
  pen.lineWidth = 18
  pen.beginPath()
  pen.moveTo(cx - r * 0.18 * Math.sin(a), cy + r * 0.18 * Math.cos(a))
  pen.lineTo(cx + r * 0.86 * Math.sin(a), cy - r * 0.86 * Math.cos(a))
  pen.stroke()
  pen.beginPath()
  pen.arc(cx, cy, 34, 0, 2 * Math.PI)
  pen.fillStyle = '#222'
  pen.fill()
}
