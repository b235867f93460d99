import { readFileSync } from 'node:fs';
import { Compile } from 'typebox/schema';
import { parse } from 'yaml';

/** The parts of a compose file that the rules read; its form is said by the schema. */
export interface ComposeFile {
  readonly services: Readonly<Record<string, ComposeService>>;
  readonly volumes?: Readonly<Record<string, unknown>>;
  readonly secrets?: Readonly<Record<string, { readonly file?: string }>>;
}

export interface ComposeService {
  readonly image?: string;
  readonly user?: string;
  readonly read_only?: boolean;
  readonly privileged?: boolean;
  readonly network_mode?: string;
  readonly cap_add?: readonly string[];
  readonly cap_drop?: readonly string[];
  readonly security_opt?: readonly string[];
  readonly restart?: string;
  readonly stop_grace_period?: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly secrets?: readonly string[];
  readonly ports?: readonly string[];
  readonly volumes?: readonly string[];
  readonly healthcheck?: { readonly test: readonly string[]; readonly disable?: boolean };
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
  readonly deploy?: { readonly resources?: { readonly limits?: Readonly<Record<string, string | number>> } };
}

type Rule = readonly [fault: string, broken: (service: ComposeService, file: ComposeFile) => boolean];

const schema = Compile(
  JSON.parse(readFileSync(new URL('compose-spec/compose-spec.json', import.meta.url), 'utf8')) as object,
);

/** What every service keeps; a rule that is broken is a fault in these words. */
const rules: readonly Rule[] = [
  [
    'its image names no exact release',
    ({ image }) => !/:\d+\.\d+\.\d+(-[\w.]+)?(@sha256:[0-9a-f]{64})?$/.test(image ?? ''),
  ],
  ['its user is root or has a name', ({ user }) => !/^[1-9]\d*:[1-9]\d*$/.test(user ?? '')],
  ['its root file system can be written', ({ read_only }) => read_only !== true],
  ['it is privileged', ({ privileged }) => privileged !== undefined],
  ['it is on the network of the host', ({ network_mode }) => network_mode !== undefined],
  ['it keeps capabilities', service => service.cap_drop?.join() !== 'ALL' || service.cap_add !== undefined],
  ['it can gain privileges', ({ security_opt }) => security_opt?.join() !== 'no-new-privileges:true'],
  ['it is not started again', ({ restart }) => restart !== 'unless-stopped'],
  ['its time to stop is not said', ({ stop_grace_period }) => stop_grace_period === undefined],
  ['its resources have no limit', ({ deploy }) => !limited(deploy?.resources?.limits)],
  ['its health is not asked', ({ healthcheck }) => healthcheck?.test[0] !== 'CMD' || healthcheck.disable !== undefined],
  ['a port is open to other machines', ({ ports = [] }) => !ports.every(port => /^127\.0\.0\.1:\d+:\d+$/.test(port))],
  ['it does not wait for health', service => !Object.values(service.depends_on ?? {}).every(waitsForHealth)],
  ['a volume is not a named one', ({ volumes = [] }, file) => !volumes.every(volume => named(volume, file))],
  ['a secret stands in its environment', service => !Object.entries(service.environment ?? {}).every(keepsSecret)],
  ['a secret file is not mounted', service => !secretFiles(service).every(file => mounted(file, service))],
];

/** @throws Error if the text is no YAML */
export function readCompose(text: string): ComposeFile {
  return parse(text, { merge: true }) as ComposeFile;
}

/** Where the text departs from the schema of the compose specification, as `path: message`. */
export function schemaFaults(text: string): readonly string[] {
  const [, errors] = schema.Errors(readCompose(text));
  return errors.map(({ instancePath, message }) => `${instancePath}: ${message}`);
}

/** What is less closed than it should be, as `service: fault`. */
export function hardeningFaults(text: string): readonly string[] {
  const file = readCompose(text);
  const ofServices = Object.entries(file.services).flatMap(([name, service]) =>
    rules.filter(([, broken]) => broken(service, file)).map(([fault]) => `${name}: ${fault}`),
  );
  const ofSecrets = Object.entries(file.secrets ?? {})
    .filter(([name, { file: path, ...other }]) => path !== `./secrets/${name}` || Object.keys(other).length > 0)
    .map(([name]) => `secret ${name}: it is not the file of its name`);
  return [...ofServices, ...ofSecrets];
}

function limited(limits: Readonly<Record<string, string | number>> = {}): boolean {
  return ['cpus', 'memory', 'pids'].every(key => limits[key] !== undefined);
}

function waitsForHealth({ condition }: { readonly condition: string }): boolean {
  return condition === 'service_healthy';
}

function named(volume: string, { volumes = {} }: ComposeFile): boolean {
  const [source = '', target = ''] = volume.split(':');
  return Object.hasOwn(volumes, source) && target.startsWith('/');
}

/** A variable whose name tells of a secret names a file; no other holds `user:password@` or what a caller's shell says. */
function keepsSecret([name, value]: readonly [string, string]): boolean {
  if (/_FILE$/.test(name)) return value.startsWith('/run/secrets/');
  return !/AUTH|PASS|SECRET|TOKEN|CREDENTIAL/i.test(name) && !/\$|:\/\/[^/]*@|^neo4j\//.test(value);
}

function secretFiles({ environment = {} }: ComposeService): readonly string[] {
  return Object.values(environment).filter(value => value.startsWith('/run/secrets/'));
}

function mounted(file: string, { secrets = [] }: ComposeService): boolean {
  return secrets.some(secret => file === `/run/secrets/${secret}`);
}
