/** The command line itself was not understood: a word, an option or its value. */
export class WrongUse extends Error {}
