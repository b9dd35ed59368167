import { defineConfig } from 'vite'

/** The window's preload: one CommonJS file, since a sandboxed preload can load nothing else. */
export default defineConfig({
  build: {
    ssr: 'main/hosts/electron/preload.ts',
    target: 'node20',
    outDir: 'dist/main',
    emptyOutDir: false,
    rollupOptions: {
      external: ['electron'],
      output: { format: 'cjs', entryFileNames: 'preload.cjs' },
    },
  },
})
