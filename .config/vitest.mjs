import {defineConfig} from 'vitest/config'

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/offline/**', 'tests/printed/**', 'tests/prove/**'],
    testTimeout: 20_000,
    maxWorkers: 2,
  },
})
