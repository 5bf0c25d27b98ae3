import {gateCases} from '../check/each-rule/gate-cases.ts'
import {languageCases} from '../check/each-rule/language-cases.ts'
import {laterCases} from '../check/each-rule/later-cases.ts'
import {plainCases} from '../check/each-rule/plain-cases.ts'
import type {RuleCase} from '../check/each-rule/rule-case.ts'
import {urgentCases} from '../check/each-rule/urgent-cases.ts'
import {calibrationFaults} from './calibration-faults.ts'
import {holdFaults} from './hold-faults.ts'
import {holdRecordFaults} from './hold-record-faults.ts'
import {hoursFaults} from './hours-faults.ts'
import {idleFaults} from './idle-faults.ts'
import {paperFaults} from './paper-faults.ts'
import {procedureFaults} from './procedure-faults.ts'
import {purgeFaults} from './purge-faults.ts'
import {stackFaults} from './stack-faults.ts'
import {vesselFaults} from './vessel-faults.ts'
import {wearFaults} from './wear-faults.ts'

/** A fault by its plain name, with the small content that carries it and the clean one. */
export interface PlantedFault {
  readonly name: string
  readonly twins: RuleCase
}

const ofRules = [...gateCases, ...languageCases, ...plainCases, ...laterCases, ...urgentCases]

/** Faults of gates that already stand among the twins of the rules, by their plain names. */
const gatesOfRules = [
  'a step whose action brings a hazard that no caution names',
  'a caution after the instruction',
  'advice that says nothing to do',
  'a valve that stays locked',
  'a valve opened that nobody closed',
  'a pump without a point for a role that is isolated',
  'a reading that nobody judges',
  'an instrument that shows nothing',
  'a hold point that one role signs twice',
  'a reading as left without its twin as found',
  'a clearance held against a length',
  'a joint that says nothing of its lubrication',
  'a number typed into a sentence',
  'a mistyped value of a fact',
  'a reference by the name of a file',
  'a procedure of more steps than are kept in view',
  'a failure that nobody has an answer for',
  'two urgent revisions under one number',
  'an urgent revision that ends before it begins',
  'an urgent revision for a state in which no pump is',
  'a torque replaced without its passes',
]

function twinsOf(name: string): RuleCase {
  const twins = ofRules.find((one) => one.what === name)
  if (!twins) throw new Error(`Unexpected name \`${name}\`, expected that of two twins of a rule`)
  return twins
}

/**
 * Every planted fault: those that one vessel brings with her papers, and at least one for each gate of the procedures.
 *
 * Each must be told at its place in its words, and nothing about its clean twin.
 */
export const plantedFaults: readonly PlantedFault[] = [
  ...[
    ...vesselFaults,
    ...stackFaults,
    ...paperFaults,
    ...hoursFaults,
    ...calibrationFaults,
    ...wearFaults,
    ...purgeFaults,
    ...holdRecordFaults,
    ...idleFaults,
  ].map((twins) => ({
    name: twins.what,
    twins,
  })),
  ...gatesOfRules.map((name) => ({name, twins: twinsOf(name)})),
  ...[...procedureFaults, ...holdFaults].map((twins) => ({name: twins.what, twins})),
]
