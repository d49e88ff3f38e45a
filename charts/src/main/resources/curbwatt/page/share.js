// A scenario inside a link: compressed into the part after #, which a browser never sends anywhere.

const MARK = "#scene=";
const MOST_CHARACTERS = 4_000_000;

async function through(stream, bytes) {
  const piped = new Blob([bytes]).stream().pipeThrough(stream);
  return new Uint8Array(await new Response(piped).arrayBuffer());
}

/** The link for a scenario's text. */
export async function link(text) {
  const bytes = await through(new CompressionStream("deflate-raw"), new TextEncoder().encode(text));
  let binary = "";
  bytes.forEach((byte) => (binary += String.fromCharCode(byte)));
  const code = btoa(binary).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
  return location.origin + "/" + MARK + code;
}

/** The scenario's text in an address; null where there is none. Throws where it is damaged. */
export async function linked(hash) {
  if (!hash.startsWith(MARK)) {
    return null;
  }
  const binary = atob(hash.slice(MARK.length).replace(/-/g, "+").replace(/_/g, "/"));
  const reader = new Blob([Uint8Array.from(binary, (c) => c.charCodeAt(0))])
    .stream()
    .pipeThrough(new DecompressionStream("deflate-raw"))
    .pipeThrough(new TextDecoderStream())
    .getReader();
  let text = "";
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    text += piece.value;
    if (text.length > MOST_CHARACTERS) {
      await reader.cancel();
      throw new Error("too long");
    }
  }
  return text;
}
