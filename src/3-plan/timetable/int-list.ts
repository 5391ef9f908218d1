// A list of whole numbers that grows, kept in one typed array: the search pushes and takes back millions of them.

/** Numbers of 32 bits; `data` may be read and written below `length`, and is another array after a push. */
export class IntList {
  data: Int32Array = new Int32Array(16);
  length = 0;

  push(value: number): void {
    if (this.length === this.data.length) {
      const larger = new Int32Array(this.data.length * 2);
      larger.set(this.data);
      this.data = larger;
    }
    this.data[this.length++] = value;
  }
}
