/** The part of citeproc that is used here; the package has no types. */
declare module 'citeproc' {
  export interface CslNode {
    readonly name: string;
    readonly attrs: Readonly<Record<string, string>>;
    readonly children: readonly (CslNode | string)[];
  }

  export interface System {
    retrieveLocale(language: string): CslNode;
    retrieveItem(id: string): object;
  }

  export interface Bibliography {
    readonly entry_ids: readonly (readonly string[])[];
  }

  export interface CitationCluster {
    readonly citationItems: readonly { readonly id: string }[];
    readonly properties: { readonly noteIndex: number };
  }

  export type TermForm = 'long' | 'short' | 'verb';

  export class Engine {
    constructor(system: System, style: CslNode, language?: string, forceLanguage?: boolean);
    readonly opt: { readonly development_extensions: Record<string, boolean> };
    /** @param plural 0 for one, 1 for several */
    getTerm(term: string, form: TermForm, plural: 0 | 1): string | undefined;
    setOutputFormat(format: 'text' | 'html'): void;
    updateItems(ids: readonly string[]): void;
    makeBibliography(): readonly [Bibliography, readonly string[]] | false;
    previewCitationCluster(
      citation: CitationCluster,
      before: readonly [],
      after: readonly [],
      format: 'text' | 'html',
    ): string;
  }

  const CSL: {
    readonly Engine: typeof Engine;
    debug: (message: string) => void;
  };
  // biome-ignore lint/style/noDefaultExport: the package is one CommonJS value
  export default CSL;
}
