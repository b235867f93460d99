/** A command line that says too little, too much, or what is none of its choices: the process ends with 2. */
export class WrongUse extends Error {}
