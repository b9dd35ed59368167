import type { AppError } from '../../app/contract/app-error.ts'

/** One line to the terminal. */
export function print(line: string): void {
  process.stdout.write(`${line}\n`)
}

/** An error to the terminal: what happened, then what to do. */
export function printError({ message, help }: AppError): void {
  process.stderr.write(`${message}\n${help}\n`)
}
