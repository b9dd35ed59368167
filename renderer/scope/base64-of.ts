/** The bytes of a file as base64, as they stand on the disk. */
export function base64Of(file: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.addEventListener('load', () => {
      const url = typeof reader.result === 'string' ? reader.result : ''
      resolve(url.slice(url.indexOf(',') + 1))
    })
    reader.addEventListener('error', () => reject(new Error('The file can’t be read.')))
    reader.readAsDataURL(file)
  })
}
