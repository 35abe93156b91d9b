/** What numbers were before they were overwritten, to take them back to the bit, the latest first. */
export class Journal {
  private at = new Int32Array(512);
  private value = new Float64Array(512);
  private size = 0;

  clear(): void {
    this.size = 0;
  }

  note(at: number, value: number): void {
    if (this.size === this.at.length) this.grow();
    this.at[this.size] = at;
    this.value[this.size++] = value;
  }

  takeBack(numbers: Float64Array | Int16Array | Int8Array): void {
    for (let i = this.size - 1; i >= 0; i--) numbers[this.at[i]] = this.value[i];
    this.size = 0;
  }

  private grow(): void {
    const [at, value] = [this.at, this.value];
    this.at = new Int32Array(2 * at.length);
    this.value = new Float64Array(2 * at.length);
    this.at.set(at);
    this.value.set(value);
  }
}
