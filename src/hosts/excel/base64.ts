const STRIDE = 0x8000; // bytes handed over as arguments at once; engines take no more than some ten thousands

export function base64(bytes: Uint8Array): string {
  let text = "";
  for (let from = 0; from < bytes.length; from += STRIDE) {
    text += String.fromCharCode(...bytes.subarray(from, from + STRIDE));
  }
  return btoa(text);
}
