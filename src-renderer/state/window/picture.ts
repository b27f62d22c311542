/** Room on paper: 45 × 16 mm at 600 dots an inch. More would only make every document larger. */
const MOST = { width: 1063, height: 378 };
/** As bytes, a little under what the contract takes. */
const MOST_BYTES = 600_000;

/**
 * A picture as the letterhead wants it: drawn anew, so that nothing else that was in its file (where it was taken, by
 * whom) goes along, and no larger than paper can show. PNG, or JPEG where that would be too large.
 * @returns a `data:` address; null for what the browser cannot read as a picture
 */
export async function letterheadPicture(file: Blob): Promise<string | null> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file);
  } catch {
    return null;
  }
  const scale = Math.min(1, MOST.width / picture.width, MOST.height / picture.height);
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(picture.width * scale)),
    Math.max(1, Math.round(picture.height * scale)),
  );
  const drawing = canvas.getContext('2d');
  if (drawing === null) return null;
  drawing.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const png = await canvas.convertToBlob({ type: 'image/png' });
  if (png.size <= MOST_BYTES) return addressOf(png);
  // What was see-through would turn black.
  drawing.globalCompositeOperation = 'destination-over';
  drawing.fillStyle = '#fff';
  drawing.fillRect(0, 0, canvas.width, canvas.height);
  return addressOf(await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 }));
}

function addressOf(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(String(reader.result)));
    reader.addEventListener('error', () => reject(reader.error ?? new Error('unreadable')));
    reader.readAsDataURL(blob);
  });
}
