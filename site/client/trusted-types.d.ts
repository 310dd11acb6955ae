type ScriptUrlRules = { createScriptURL(url: string): string };

/** What the page's policy asks before a script is let in. Older browsers have none. */
interface Window {
  readonly trustedTypes?: { createPolicy(name: string, rules: ScriptUrlRules): ScriptUrlRules };
}
