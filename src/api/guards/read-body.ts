import { PlatestemmaError } from '../../errors.ts';

/**
 * The body of a request; undefined if it is larger than the limit: the rest is not read then.
 * @throws INPUT_INVALID if it breaks off
 */
export async function readBody(request: Request, limit: number): Promise<Buffer | undefined> {
  if (request.body === null) return Buffer.alloc(0);
  // A loop over the body would close the connection when it is left, before the answer.
  const reader = request.body.getReader();
  const chunks: Uint8Array[] = [];
  for (let size = 0; ; ) {
    const { done, value } = await reader.read().catch(brokenOff);
    if (done) return Buffer.concat(chunks);
    size += value.byteLength;
    if (size > limit) return undefined;
    chunks.push(value);
  }
}

function brokenOff(cause: unknown): never {
  const message = 'body: expected a whole body, came one that broke off';
  throw new PlatestemmaError('INPUT_INVALID', message, { cause, place: { field: 'body' } });
}
