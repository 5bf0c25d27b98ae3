// README command one: compiles the program and builds the demonstration handbooks.

import {spawnSync} from 'node:child_process'
import {fileURLToPath} from 'node:url'
import {compile} from './compile.mjs'

await compile()
const root = fileURLToPath(new URL('..', import.meta.url))
const run = spawnSync(process.execPath, ['.build/cli.js', 'build', ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
})
process.exitCode = run.status ?? 3
