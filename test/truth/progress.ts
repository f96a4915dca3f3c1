import process from 'node:process';

/** One line on standard error: how many draws are done, and how long the rest will take. */
export class Progress {
  private done = 0;
  private readonly began = performance.now();
  private told = 0;
  private readonly total: number;

  constructor(total: number) {
    this.total = total;
  }

  step(draws: number): void {
    this.done += draws;
    const now = performance.now();
    const pause = process.stderr.isTTY ? 500 : 15_000;
    if (now - this.told < pause) return;
    this.told = now;
    const spent = (now - this.began) / 1000;
    const left = (spent * (this.total - this.done)) / this.done;
    const line = `${this.done} of ${this.total} draws, ${clock(left)} left`;
    process.stderr.write(process.stderr.isTTY ? `\r${line}   ` : `${line}\n`);
  }

  end(): void {
    const spent = clock((performance.now() - this.began) / 1000);
    process.stderr.write(`${process.stderr.isTTY ? '\r' : ''}${this.done} draws in ${spent}      \n`);
  }
}

function clock(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')} min`;
}
