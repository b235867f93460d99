import { readFile } from 'node:fs/promises';
import { buildCommand } from '@stricli/core';
import { PlatestemmaError } from '../errors.ts';
import type { CitationFormat } from '../questions/questions.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { asOfJson } from './grounds-text.ts';
import { type AsOfFlags, asOfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';

interface CiteFlags extends CommonFlags, AsOfFlags {
  readonly format: 'text' | 'csl' | 'bibtex' | 'ris';
  readonly style?: string;
  readonly locale?: string;
}

const formats: Readonly<Record<CiteFlags['format'], CitationFormat>> = {
  text: 'TEXT',
  csl: 'CSL_JSON',
  bibtex: 'BIBTEX',
  ris: 'RIS',
};

export const cite = buildCommand<CiteFlags, readonly string[], CliContext>({
  docs: {
    brief: 'Cite editions, plates, artworks, pieces and exemplars',
    fullDescription: [
      'Cite editions, plates, artworks, pieces, exemplars and references: as text in a style of the Citation Style',
      'Language, as CSL-JSON, as BibTeX, or as RIS. A plate is cited in the earliest edition that has it; the id of an',
      'appearance cites it in that edition.',
      '',
      '  platestemma cite edition-shore-leipzig-1758',
      '  platestemma cite edition-shore-leipzig-1758 --style mhra --locale de-DE',
      '  platestemma cite edition-shore-leipzig-1758 --format bibtex',
      '  platestemma cite plate-shore-4-net-menders piece-shore-dish --format ris',
      '  platestemma cite appearance-menders-london-1764',
      '',
      'Text is written by citeproc-js. Attribution Copyright Notice: (c) Frank Bennett. citeproc-js implements the Citation',
      'Style Language. https://citationstyles.org/',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'array',
      minimum: 1,
      parameter: { parse: String, brief: 'Ids of records', placeholder: 'id' },
    },
    flags: {
      ...commonFlags,
      ...asOfFlags,
      format: {
        kind: 'enum',
        values: ['text', 'csl', 'bibtex', 'ris'],
        default: 'text',
        brief: 'Form of the citation',
      },
      style: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Name of a style, or a .csl file',
        placeholder: 'name or file',
      },
      locale: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Language of the citation, e.g. de-DE',
        placeholder: 'tag',
      },
    },
  },
  func(flags, ...ids) {
    return withGraph(this, flags, async ({ questions, premises }) => {
      // What is cited goes into a file as it is.
      this.process.stderr.write(
        premises
          .words()
          .map(line => `${line}\n`)
          .join(''),
      );
      const style = flags.style?.endsWith('.csl') === true ? await styleIn(flags.style) : flags.style;
      const answer = await questions.citation({
        of: ids,
        format: formats[flags.format],
        ...(style === undefined ? {} : { style }),
        ...(flags.locale === undefined ? {} : { locale: flags.locale }),
      });
      if (flags.json === true) printJson(this, { ...answer, ...asOfJson(premises) });
      else if (flags.format === 'ris') this.process.stdout.write(`${answer.text.replace(/[\r\n]+$/, '')}\r\n`);
      else printText(this, `${answer.text.replace(/[\r\n]+$/, '')}\n`);
    });
  },
});

async function styleIn(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch (cause) {
    throw new PlatestemmaError(
      'SOURCE_REFUSED',
      `expected a style that can be read, came "${file}": ${(cause as Error).message}`,
      { cause, place: { file } },
    );
  }
}
