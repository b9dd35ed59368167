import { builtinModules } from 'node:module'
import { defineConfig } from 'vite'
import packageJson from './package.json' with { type: 'json' }

const outside = [...Object.keys(packageJson.dependencies), 'electron', ...builtinModules, /^node:/]

/** Bundles the main side for Node and for Electron's main process; packages stay outside and are loaded as installed. */
export default defineConfig({
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist/main',
    emptyOutDir: true,
    sourcemap: true,
    rollupOptions: {
      input: {
        cli: 'main/cli/main.ts',
        electron: 'main/hosts/electron/main.ts',
        'video-worker': 'main/library/reading/video/video-worker.js',
        'heif-worker': 'main/library/previews/decoders/heif-worker.js',
      },
      external: (id) =>
        outside.some((name) => (typeof name === 'string' ? id === name || id.startsWith(`${name}/`) : name.test(id))),
      output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' },
    },
  },
})
