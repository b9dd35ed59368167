import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    projects: [
      { test: { name: 'unit', include: ['app/**/*.test.ts', 'main/**/*.test.ts', 'renderer/**/*.test.ts'], environment: 'node' } },
      {
        test: {
          name: 'whole',
          include: ['tests/**/*.test.ts'],
          environment: 'node',
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
})
