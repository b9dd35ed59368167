import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'

/**
 * Runs a command as a whole process and measures it.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @returns {Promise<{ seconds: number, cpuSeconds: number, peakMiB: number, output: string }>}
 */
export function runMeasured(command, args) {
  return new Promise((resolve, reject) => {
    const startedAt = process.hrtime.bigint()
    const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'inherit'] })
    let output = ''
    let peakKiB = 0
    child.stdout.on('data', (part) => (output += part))
    const watch = setInterval(() => {
      peakKiB = Math.max(peakKiB, peakOf(child.pid))
    }, 20)
    child.once('error', reject)
    child.once('close', (code) => {
      clearInterval(watch)
      if (code !== 0) return reject(new Error(`${command} ended with ${code}`))
      resolve({
        seconds: Number(process.hrtime.bigint() - startedAt) / 1e9,
        cpuSeconds: cpuOfChildren(),
        peakMiB: peakKiB / 1024,
        output,
      })
    })
  })
}

/** High-water mark of a process's resident memory, KiB; Linux only, 0 elsewhere. */
function peakOf(pid) {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0)
  } catch {
    return 0
  }
}

/** CPU seconds of ended children, from /proc/self/stat (fields cutime and cstime, in hundredths of a second). */
let lastChildren = childTicks()
function cpuOfChildren() {
  const now = childTicks()
  const spent = now - lastChildren
  lastChildren = now
  return spent / 100
}

function childTicks() {
  try {
    const fields = readFileSync('/proc/self/stat', 'utf8').split(') ')[1].split(' ')
    return Number(fields[13]) + Number(fields[14])
  } catch {
    return 0
  }
}
