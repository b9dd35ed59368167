import { defineConfig } from 'vitest/config'

/** Files are made and hashed in most tests, so that a slow disk needs some patience. */
const patience = { testTimeout: 120_000, hookTimeout: 180_000 }

export default defineConfig({
  test: {
    reporters: ['default', './tests/count-reporter.ts'],
    projects: [
      {
        test: {
          name: 'unit',
          include: ['app/**/*.test.ts', 'main/**/*.test.ts', 'renderer/**/*.test.ts'],
          environment: 'node',
          ...patience,
        },
      },
      {
        test: { name: 'whole', include: ['tests/**/*.test.ts'], environment: 'node', ...patience },
      },
    ],
  },
})
