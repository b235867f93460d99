/** A number with what it counts: `1 step`, `1,200 steps`. */
export function howMany(count: number, one: string, several = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : several}`;
}
