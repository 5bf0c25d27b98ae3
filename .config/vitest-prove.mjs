import {fileURLToPath} from 'node:url'
import {defineConfig} from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/prove/**/*.test.ts'],
    testTimeout: 180_000,
    hookTimeout: 180_000,
    maxConcurrency: 12,
    fileParallelism: false,
  },
})
