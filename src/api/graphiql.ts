import { createHash } from 'node:crypto';

/** The page on which queries are written, and the policy under which a browser may run it. */
export interface GraphiqlPage {
  /** One for all: connections that take it slowly hold no copy of their own. */
  readonly body: Buffer<ArrayBuffer>;
  readonly contentSecurityPolicy: string;
}

const defaultQuery = `# Which editions could have reached a place in time?
query Reach {
  reach(at: { placeName: "London" }, by: "1766", first: 5) {
    counts { inEveryCase inSomeCases inNoCase contradictory }
    editions {
      nodes { verdict margin { every some } edition { id label } why { message } }
    }
    grounds { basis cautions }
  }
}

# How is a plate cited? Text is written by citeproc-js. Attribution Copyright Notice: (c) Frank Bennett.
# citeproc-js implements the Citation Style Language. https://citationstyles.org/
query Cite {
  citation(of: ["plate-shore-4-net-menders"], style: "mhra") { text }
}
`;

/**
 * GraphiQL with everything it needs in one page: nothing is fetched from elsewhere, and its policy lets it speak to this
 * server alone. Loaded only when asked for: it is nine megabytes.
 */
export async function graphiqlPage(): Promise<GraphiqlPage> {
  const { renderGraphiQL } = await import('@graphql-yoga/render-graphiql');
  const page = renderGraphiQL({ title: 'Platestemma', defaultQuery, shouldPersistHeaders: false });
  const start = page.indexOf('<script>') + '<script>'.length;
  const script = page.slice(start, page.indexOf('</script', start));
  const hash = createHash('sha256').update(script).digest('base64');
  return {
    body: Buffer.from(page),
    contentSecurityPolicy: [
      "default-src 'none'",
      `script-src 'sha256-${hash}' blob:`,
      'worker-src blob:',
      "style-src 'unsafe-inline'",
      'img-src data:',
      'font-src data:',
      "connect-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
      "frame-ancestors 'none'",
    ].join('; '),
  };
}
