import { DockerfileParser, type Instruction, ModifiableInstruction } from 'dockerfile-ast';

/** One instruction of a Dockerfile. */
export interface Step {
  readonly keyword: string;
  /** All behind the keyword and its flags, continued lines as one. */
  readonly text: string;
  /** The words of `text`, or the strings of its exec form. */
  readonly words: readonly string[];
  /** Whether the words stand in the exec form, `["word", …]`, which no shell reads. */
  readonly exec: boolean;
  /** Flags without their dashes. */
  readonly flags: Readonly<Record<string, string>>;
}

export interface Stage {
  readonly image: string;
  readonly name: string | undefined;
  readonly steps: readonly Step[];
  all(keyword: string): readonly Step[];
  /** @throws Error if the stage has none, or several */
  one(keyword: string): Step;
}

/** The stages of a Dockerfile, in order. */
export function readDockerfile(text: string): readonly Stage[] {
  const stages: { readonly from: Step; readonly steps: Step[] }[] = [];
  for (const instruction of DockerfileParser.parse(text).getInstructions()) {
    const step = stepOf(instruction);
    if (step.keyword === 'FROM') stages.push({ from: step, steps: [] });
    else if (stages.length === 0) throw new Error(`expected FROM first, came ${step.keyword}`);
    else stages.at(-1)!.steps.push(step);
  }
  return stages.map(({ from, steps }) => stageOf(from, steps));
}

/** The stage that becomes the image. */
export function finalStage(stages: readonly Stage[]): Stage {
  const stage = stages.at(-1);
  if (stage === undefined) throw new Error('expected a stage, came none');
  return stage;
}

function stageOf({ words }: Step, steps: readonly Step[]): Stage {
  const all = (keyword: string) => steps.filter(step => step.keyword === keyword);
  return {
    image: words[0] ?? '',
    name: words[1]?.toUpperCase() === 'AS' ? words[2] : undefined,
    steps,
    all,
    one: keyword => {
      const [step, ...more] = all(keyword);
      if (step === undefined || more.length > 0)
        throw new Error(`expected one ${keyword}, came ${all(keyword).length}`);
      return step;
    },
  };
}

function stepOf(instruction: Instruction): Step {
  const flags = instruction instanceof ModifiableInstruction ? instruction.getFlags() : [];
  const shellWords = instruction.getArguments().map(each => each.getValue());
  const text = shellWords.join(' ');
  const strings = execForm(text);
  return {
    keyword: instruction.getKeyword(),
    text,
    words: strings ?? shellWords,
    exec: strings !== undefined,
    flags: Object.fromEntries(flags.map(flag => [flag.getName(), flag.getValue() ?? ''])),
  };
}

/** The strings of `["word", …]`, or of a health check's `CMD ["word", …]`; what is no JSON goes to a shell. */
function execForm(text: string): readonly string[] | undefined {
  const [, array] = /^(?:CMD )?(\[.*\])$/.exec(text) ?? [];
  try {
    return array === undefined ? undefined : (JSON.parse(array) as string[]);
  } catch {
    return undefined;
  }
}
