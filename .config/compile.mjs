// Compiles src to .build: the command line program, and the page runtime as classic scripts.
import {fileURLToPath} from 'node:url'
import {build} from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Compiles both halves; throws when a source does not compile. */
export async function compile() {
  await build({
    absWorkingDir: root,
    entryPoints: {cli: 'src/cli.ts'},
    outdir: '.build',
    bundle: true,
    splitting: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    banner: {js: '#!/usr/bin/env node'},
    logLevel: 'warning',
  })
  await build({
    absWorkingDir: root,
    entryPoints: {
      head: 'src/browser/head.ts',
      page: 'src/browser/page.ts',
      hub: 'src/browser/hub.ts',
      charts: 'src/browser/charts.ts',
    },
    outdir: '.build/runtime',
    bundle: true,
    format: 'iife',
    platform: 'browser',
    target: ['chrome96', 'firefox91'],
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'warning',
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await compile()
