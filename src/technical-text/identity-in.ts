/** What a technical text says of its page: position, vessel, title and the other kinds of its identity lines. */
export function identityIn(text: string | undefined, kind: string): string | undefined {
  return new RegExp(`^identity\\t${kind}\\t(.*)$`, 'mu').exec(text ?? '')?.[1]
}
