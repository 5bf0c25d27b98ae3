/** A text that no template writes itself, with every letter that HTML would misread. */
export const text = (name: string): string => `${name} <b> & "mark" ${name}-end`
