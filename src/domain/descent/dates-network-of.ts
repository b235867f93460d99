import type { DatesNetwork } from './dates-network.ts';
import type { LinkedRecords, NetworkOptions } from './linked-records.ts';

/** The network of all dates that the counted claims about the records bound or link. */
export function datesNetworkOf(_rows: LinkedRecords, _options: NetworkOptions): DatesNetwork {
  return { bounds: [], links: [], choices: [] };
}
