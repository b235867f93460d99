import { checkId } from '../domain/model/id.ts';
import { cite } from '../output/cite/cite.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { citableOf } from './citable-of.ts';
import { type CitationGraph, citationGraph } from './citation-graph.ts';
import type { CitationAsked, Citations } from './questions.ts';

/**
 * Citations of records, in the order asked for. A plate is cited in the earliest edition that has it; the id of an
 * Appearance cites it in the edition that the claim names.
 */
export async function citation(store: GraphStore, asked: CitationAsked): Promise<Citations> {
  for (const id of asked.of) checkId(id);
  const graph = await citationGraph(store, asked.of);
  const [language = 'en'] = (asked.format === 'TEXT' ? (asked.locale ?? '') : '').split(/[-_]/).filter(Boolean);
  const citables = asked.of.map(id => citableOf(id, graph, language));
  const cited = cite(citables, {
    format: asked.format,
    ...(asked.style === undefined ? {} : { style: asked.style }),
    ...(asked.locale === undefined ? {} : { locale: asked.locale }),
  });
  return { ...cited, items: cited.items.map(item => ({ ...item, record: recordOf(item.id, graph) })) };
}

function recordOf(id: string, graph: CitationGraph): string {
  const row = graph.row(id);
  return row?.kind === 'Appearance' ? row.plate : id;
}
