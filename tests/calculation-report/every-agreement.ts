import {agreements as boltedJoints} from '../calculations/bolted-joints/agreements.ts'
import {agreements as clearances} from '../calculations/clearances/agreements.ts'
import {agreements as entry} from '../calculations/entry/agreements.ts'
import {agreements as gas} from '../calculations/gas/agreements.ts'
import {agreements as heating} from '../calculations/heating/agreements.ts'
import {agreements as hydraulics} from '../calculations/hydraulics/agreements.ts'
import {agreements as lifting} from '../calculations/lifting/agreements.ts'
import {agreements as oil} from '../calculations/oil/agreements.ts'
import {agreements as planning} from '../calculations/planning/agreements.ts'
import {agreements as pump} from '../calculations/pump/agreements.ts'
import {agreements as runOut} from '../calculations/run-out/agreements.ts'
import {agreements as seals} from '../calculations/seals/agreements.ts'
import {agreements as wear} from '../calculations/wear/agreements.ts'
import type {HeldRows} from '../published-values/agreement.ts'
import {agreements as quantities} from '../quantities/agreements.ts'

/** Every published row of every family with what the library gives for it. */
export const everyAgreement: readonly HeldRows[] = [
  ...boltedJoints,
  ...clearances,
  ...entry,
  ...gas,
  ...heating,
  ...hydraulics,
  ...lifting,
  ...oil,
  ...planning,
  ...pump,
  ...runOut,
  ...seals,
  ...wear,
  ...quantities,
]
