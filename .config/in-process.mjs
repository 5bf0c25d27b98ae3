// Bundles the stages into one module, so that measurements can call them without a new process.

import {fileURLToPath, pathToFileURL} from 'node:url'
import {build} from 'esbuild'
import {compile} from './compile.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))

const exported = `
export {runBuild} from './src/commands/build.ts'
export {runCheck} from './src/commands/check.ts'
export {readProgramFiles} from './src/commands/program-files.ts'
export {checkAndCompute, stateVessel} from './src/commands/run-stages.ts'
export {nodeDisk} from './src/publish/disk.ts'
export {publishVessel} from './src/publish/publish-vessel.ts'
export {renderHandbook} from './src/render/render-handbook.ts'
`

/** Compiles the program too, and gives its stages as a module. */
export async function loadStages() {
  await compile()
  await build({
    absWorkingDir: root,
    stdin: {contents: exported, resolveDir: root, loader: 'ts'},
    outfile: '.build/in-process.js',
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  })
  return import(pathToFileURL(`${root}.build/in-process.js`).href)
}
