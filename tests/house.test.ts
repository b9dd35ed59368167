import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { projectFiles } from './builders/project-files.ts'

const LAYERS = /^(app|main|renderer)\//
const CODE = /\.(ts|tsx|js|mjs|css)$/
/** `take-in.ts`, `take-in.test.ts`, `0001-first-library.ts`, `linebreak.d.ts`. */
const KEBAB_CASE = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+)*$/

const files = projectFiles().filter((file) => !file.startsWith('tests/arrows/planted/'))
const layerFiles = files.filter((file) => LAYERS.test(file))

describe('the files of the house', () => {
  it('are there to be looked at', () => {
    expect(layerFiles.length).toBeGreaterThan(300)
  })

  it('have names in kebab-case', () => {
    const code = files.filter((file) => CODE.test(file))
    expect(code.filter((file) => !KEBAB_CASE.test(file.slice(file.lastIndexOf('/') + 1)))).toEqual([])
  })

  it('have at most 300 lines, without exception', () => {
    const long = layerFiles.filter((file) => CODE.test(file) && lineCount(file) > 300)
    expect(long).toEqual([])
  })
})

describe('DEVELOPERS.md', () => {
  const named = existsSync('DEVELOPERS.md') ? pathsIn(readFileSync('DEVELOPERS.md', 'utf8')) : []

  it('names parts of the house', () => {
    expect(named.length).toBeGreaterThan(15)
  })

  it.each(named)('names %s, which is there', (path) => {
    expect(existsSync(path)).toBe(true)
  })
})

describe.skipIf(!existsSync('.git'))('what is kept under version control', () => {
  const kept = existsSync('.git') ? keptTexts() : new Map<string, string>()

  it('names no folder of one particular machine', () => {
    const folders = ['work', 'tmp', 'home', 'root', 'Users'].map((name) => `/${name}/`)
    const machinePath = new RegExp(`(^|[\\s"'\`(=:,])(${folders.join('|')}|[A-Z]:\\\\Users)`, 'm')
    expect([...kept].filter(([, text]) => machinePath.test(text)).map(([file]) => file)).toEqual([])
  })

  it('names no host that packages come from, and no key to one', () => {
    const registry = /https?:\/\/[^/\s"']*(registry|npmjs|pypi|mirror)|_authToken|npm_config_registry/i
    const naming = [...kept].filter(([file, text]) => file !== 'tests/house.test.ts' && registry.test(text))
    expect(naming.map(([file]) => file)).toEqual([])
  })

  it('holds nothing that a tool makes', () => {
    expect([...kept.keys()].filter((file) => /^(node_modules|dist|demo|coverage)\/|\.log$/.test(file))).toEqual([])
  })
})

function lineCount(file: string): number {
  return readFileSync(file, 'utf8').trimEnd().split('\n').length
}

/** Paths in a text's code spans, as far as they name one file or folder that is written by hand. */
function pathsIn(text: string): readonly string[] {
  const spans = [...text.matchAll(/`([^`\n]+)`/g)].map(([, span = '']) => span)
  const paths = spans.filter((span) => /^((app|main|renderer|tests|sample-jobs|\.ci)\/|\.ox)[\w./-]*$/.test(span))
  return [...new Set(paths)]
}

function keptTexts(): ReadonlyMap<string, string> {
  const names = execFileSync('git', ['ls-files', '-z'], { encoding: 'utf8' }).split('\0')
  const texts = names
    .filter((file) => file !== '' && existsSync(file))
    .map((file) => [file, readFileSync(file, 'latin1')] as const)
  return new Map(texts.filter(([, text]) => !text.includes('\0')))
}
