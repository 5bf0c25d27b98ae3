import type {DrawnLength} from './load-shapes.ts'

/** Lengths of a pump unit below its motor, each as its design states it. */
export interface LoweringLengths {
  readonly casing: DrawnLength
  readonly height: DrawnLength
  readonly flange: DrawnLength
  readonly eye: DrawnLength
  readonly spigotBore: DrawnLength
  readonly spigotOffset: DrawnLength
  readonly motor: DrawnLength
  readonly hub: DrawnLength
  readonly clearance: DrawnLength
}

/** A pump unit on its two lowering bolts; a figure that nobody knows is `undefined`. */
export interface DrawnLowering {
  readonly way: 'down' | 'up'
  readonly mass: string | undefined
  readonly thread: {readonly mm: number; readonly text: string}
  readonly washer: DrawnLength
  readonly places: number
  readonly boltLoad: string | undefined
  readonly travel: {readonly mm: number; readonly text: string} | undefined
  readonly turns: string | undefined
  readonly torque: string | undefined
  /** What the torque holds for. */
  readonly torqueCondition: string
  readonly lengths: LoweringLengths | undefined
}
