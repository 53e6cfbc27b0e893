/** Reads a stream of text to its end, or until it is longer than `most` characters: more than that is not kept. */
export async function readAll(stream: NodeJS.ReadableStream, most: number): Promise<string> {
  const decoder = new TextDecoder();
  let text = '';
  for await (const chunk of stream) {
    text += typeof chunk === 'string' ? chunk : decoder.decode(chunk, { stream: true });
    if (text.length > most * 2) break;
  }
  return text + decoder.decode();
}
