/** How long a browser may take to fetch what was handed to it, before the memory is given back. Milliseconds. */
const fetched = 60_000;

/** Hands the file to the browser's downloads. Whether it arrives there the page is not told. */
export const saveByDownload = async (file: File): Promise<void> => {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), fetched);
};
