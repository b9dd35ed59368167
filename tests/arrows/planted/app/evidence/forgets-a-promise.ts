const saved = async () => 1

export function save(): void {
  saved()
}
