import {fileURLToPath} from 'node:url'
import {defineConfig} from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/offline/**', 'tests/printed/**', 'tests/prove/**'],
    testTimeout: 20_000,
    maxWorkers: 2,
    isolate: false,
  },
})
