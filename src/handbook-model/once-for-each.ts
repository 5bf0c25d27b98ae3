/** A pure function of one object that is worked out once for each; the object keeps nothing alive. */
export function onceForEach<K extends object, T>(workOut: (of: K) => T): (of: K) => T {
  const known = new WeakMap<K, {readonly result: T}>()
  return (of) => {
    const before = known.get(of)
    if (before) return before.result
    const result = workOut(of)
    known.set(of, {result})
    return result
  }
}
