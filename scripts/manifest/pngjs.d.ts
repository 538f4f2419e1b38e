/** The one call that is used of a library without types. */
declare module "pngjs" {
  export const PNG: { readonly sync: { read(file: Uint8Array): { readonly width: number; readonly height: number } } };
}
