/** A camera as people name it: make and model, without a make that the model's name begins with already. */
export function cameraName(camera: { readonly make: string; readonly model: string } | undefined): string {
  if (camera === undefined) return 'Camera not known'
  const { make, model } = camera
  const brand = make.split(' ')[0]?.toLowerCase() ?? ''
  const name = model.toLowerCase().startsWith(brand) ? model : `${make} ${model}`
  return name.trim() === '' ? 'Camera not named' : name.trim()
}
