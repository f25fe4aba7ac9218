// Makes a photograph small enough to send from a lawn.

const LONGEST_SIDE_PX = 1600;
const QUALITY = 0.82;
const MOST_BYTES = 8_000_000;

/** The picture as it is to be sent; throws a sentence where it is none. */
export async function picture(file) {
  let image;
  try {
    image = await createImageBitmap(file, { imageOrientation: "from-image" });
  } catch {
    throw new Error("This file is no picture that the browser can read. Choose another, or none.");
  }
  const scale = Math.min(1, LONGEST_SIDE_PX / Math.max(image.width, image.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(image.width * scale));
  canvas.height = Math.max(1, Math.round(image.height * scale));
  canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  const small = await new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", QUALITY));
  if (!small || small.size > MOST_BYTES) {
    throw new Error("This picture could not be made small enough to send. Choose another, or none.");
  }
  // Bytes rather than a Blob: some browsers lose a Blob that was kept.
  return { type: small.type, bytes: await small.arrayBuffer() };
}
