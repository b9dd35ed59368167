import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

/** The screens as static files. Both hosts serve them under a strict content policy, so nothing is put inline. */
export default defineConfig({
  root: 'renderer',
  base: '/',
  plugins: [react()],
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The PDF reader is large and is only fetched with the packet workspace.
    chunkSizeWarningLimit: 900,
  },
})
