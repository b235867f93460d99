/** The part of npm edtf (a devDependency without types of its own) that the differential test asks. */
declare module 'edtf' {
  interface EdtfValue {
    /** Milliseconds since 1970-01-01 UTC; infinite where open. */
    readonly min: number;
    readonly max: number;
  }
  // biome-ignore lint/style/noDefaultExport: the package exports its reader so
  export default function edtf(text: string): EdtfValue;
}
