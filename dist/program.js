import { i as __toESM, r as __require, t as __commonJSMin } from "./rolldown-runtime.js";
import path from "node:path";
import { constants } from "node:fs";
import { lstat, open, opendir, realpath, rename, stat, unlink } from "node:fs/promises";
import { randomBytes } from "node:crypto";
import { styleText } from "node:util";
// node_modules/commander/lib/error.js
var require_error = /* @__PURE__ */ __commonJSMin(((exports) => {
	/**
	* CommanderError class
	*/
	var CommanderError = class extends Error {
		/**
		* Constructs the CommanderError class
		* @param {number} exitCode suggested exit code which could be used with process.exit
		* @param {string} code an id string representing the error
		* @param {string} message human-readable description of the error
		*/
		constructor(exitCode, code, message) {
			super(message);
			Error.captureStackTrace(this, this.constructor);
			this.name = this.constructor.name;
			this.code = code;
			this.exitCode = exitCode;
			this.nestedError = void 0;
		}
	};
	/**
	* InvalidArgumentError class
	*/
	var InvalidArgumentError = class extends CommanderError {
		/**
		* Constructs the InvalidArgumentError class
		* @param {string} [message] explanation of why argument is invalid
		*/
		constructor(message) {
			super(1, "commander.invalidArgument", message);
			Error.captureStackTrace(this, this.constructor);
			this.name = this.constructor.name;
		}
	};
	exports.CommanderError = CommanderError;
	exports.InvalidArgumentError = InvalidArgumentError;
}));
// node_modules/commander/lib/argument.js
var require_argument = /* @__PURE__ */ __commonJSMin(((exports) => {
	const { InvalidArgumentError } = require_error();
	var Argument = class {
		/**
		* Initialize a new command argument with the given name and description.
		* The default is that the argument is required, and you can explicitly
		* indicate this with <> around the name. Put [] around the name for an optional argument.
		*
		* @param {string} name
		* @param {string} [description]
		*/
		constructor(name, description) {
			this.description = description || "";
			this.variadic = false;
			this.parseArg = void 0;
			this.defaultValue = void 0;
			this.defaultValueDescription = void 0;
			this.argChoices = void 0;
			switch (name[0]) {
				case "<":
					this.required = true;
					this._name = name.slice(1, -1);
					break;
				case "[":
					this.required = false;
					this._name = name.slice(1, -1);
					break;
				default:
					this.required = true;
					this._name = name;
			}
			if (this._name.endsWith("...")) {
				this.variadic = true;
				this._name = this._name.slice(0, -3);
			}
		}
		/**
		* Return argument name.
		*
		* @return {string}
		*/
		name() {
			return this._name;
		}
		/**
		* @package
		*/
		_collectValue(value, previous) {
			if (previous === this.defaultValue || !Array.isArray(previous)) return [value];
			previous.push(value);
			return previous;
		}
		/**
		* Set the default value, and optionally supply the description to be displayed in the help.
		*
		* @param {*} value
		* @param {string} [description]
		* @return {Argument}
		*/
		default(value, description) {
			this.defaultValue = value;
			this.defaultValueDescription = description;
			return this;
		}
		/**
		* Set the custom handler for processing CLI command arguments into argument values.
		*
		* @param {Function} [fn]
		* @return {Argument}
		*/
		argParser(fn) {
			this.parseArg = fn;
			return this;
		}
		/**
		* Only allow argument value to be one of choices.
		*
		* @param {string[]} values
		* @return {Argument}
		*/
		choices(values) {
			this.argChoices = values.slice();
			this.parseArg = (arg, previous) => {
				if (!this.argChoices.includes(arg)) throw new InvalidArgumentError(`Allowed choices are ${this.argChoices.join(", ")}.`);
				if (this.variadic) return this._collectValue(arg, previous);
				return arg;
			};
			return this;
		}
		/**
		* Make argument required.
		*
		* @returns {Argument}
		*/
		argRequired() {
			this.required = true;
			return this;
		}
		/**
		* Make argument optional.
		*
		* @returns {Argument}
		*/
		argOptional() {
			this.required = false;
			return this;
		}
	};
	/**
	* Takes an argument and returns its human readable equivalent for help usage.
	*
	* @param {Argument} arg
	* @return {string}
	* @private
	*/
	function humanReadableArgName(arg) {
		const nameOutput = arg.name() + (arg.variadic === true ? "..." : "");
		return arg.required ? "<" + nameOutput + ">" : "[" + nameOutput + "]";
	}
	exports.Argument = Argument;
	exports.humanReadableArgName = humanReadableArgName;
}));
// node_modules/commander/lib/help.js
var require_help = /* @__PURE__ */ __commonJSMin(((exports) => {
	const { humanReadableArgName } = require_argument();
	/**
	* TypeScript import types for JSDoc, used by Visual Studio Code IntelliSense and `npm run typescript-checkJS`
	* https://www.typescriptlang.org/docs/handbook/jsdoc-supported-types.html#import-types
	* @typedef { import("./argument.js").Argument } Argument
	* @typedef { import("./command.js").Command } Command
	* @typedef { import("./option.js").Option } Option
	*/
	var Help = class {
		constructor() {
			this.helpWidth = void 0;
			this.minWidthToWrap = 40;
			this.sortSubcommands = false;
			this.sortOptions = false;
			this.showGlobalOptions = false;
		}
		/**
		* prepareContext is called by Commander after applying overrides from `Command.configureHelp()`
		* and just before calling `formatHelp()`.
		*
		* Commander just uses the helpWidth and the rest is provided for optional use by more complex subclasses.
		*
		* @param {{ error?: boolean, helpWidth?: number, outputHasColors?: boolean }} contextOptions
		*/
		prepareContext(contextOptions) {
			this.helpWidth = this.helpWidth ?? contextOptions.helpWidth ?? 80;
		}
		/**
		* Get an array of the visible subcommands. Includes a placeholder for the implicit help command, if there is one.
		*
		* @param {Command} cmd
		* @returns {Command[]}
		*/
		visibleCommands(cmd) {
			const visibleCommands = cmd.commands.filter((cmd) => !cmd._hidden);
			const helpCommand = cmd._getHelpCommand();
			if (helpCommand && !helpCommand._hidden) visibleCommands.push(helpCommand);
			if (this.sortSubcommands) visibleCommands.sort((a, b) => {
				return a.name().localeCompare(b.name());
			});
			return visibleCommands;
		}
		/**
		* Compare options for sort.
		*
		* @param {Option} a
		* @param {Option} b
		* @returns {number}
		*/
		compareOptions(a, b) {
			const getSortKey = (option) => {
				return option.short ? option.short.replace(/^-/, "") : option.long.replace(/^--/, "");
			};
			return getSortKey(a).localeCompare(getSortKey(b));
		}
		/**
		* Get an array of the visible options. Includes a placeholder for the implicit help option, if there is one.
		*
		* @param {Command} cmd
		* @returns {Option[]}
		*/
		visibleOptions(cmd) {
			const visibleOptions = cmd.options.filter((option) => !option.hidden);
			const helpOption = cmd._getHelpOption();
			if (helpOption && !helpOption.hidden) {
				const removeShort = helpOption.short && cmd._findOption(helpOption.short);
				const removeLong = helpOption.long && cmd._findOption(helpOption.long);
				if (!removeShort && !removeLong) visibleOptions.push(helpOption);
				else if (helpOption.long && !removeLong) visibleOptions.push(cmd.createOption(helpOption.long, helpOption.description));
				else if (helpOption.short && !removeShort) visibleOptions.push(cmd.createOption(helpOption.short, helpOption.description));
			}
			if (this.sortOptions) visibleOptions.sort(this.compareOptions);
			return visibleOptions;
		}
		/**
		* Get an array of the visible global options. (Not including help.)
		*
		* @param {Command} cmd
		* @returns {Option[]}
		*/
		visibleGlobalOptions(cmd) {
			if (!this.showGlobalOptions) return [];
			const globalOptions = [];
			for (let ancestorCmd = cmd.parent; ancestorCmd; ancestorCmd = ancestorCmd.parent) {
				const visibleOptions = ancestorCmd.options.filter((option) => !option.hidden);
				globalOptions.push(...visibleOptions);
			}
			if (this.sortOptions) globalOptions.sort(this.compareOptions);
			return globalOptions;
		}
		/**
		* Get an array of the arguments if any have a description.
		*
		* @param {Command} cmd
		* @returns {Argument[]}
		*/
		visibleArguments(cmd) {
			if (cmd._argsDescription) cmd.registeredArguments.forEach((argument) => {
				argument.description = argument.description || cmd._argsDescription[argument.name()] || "";
			});
			if (cmd.registeredArguments.find((argument) => argument.description)) return cmd.registeredArguments;
			return [];
		}
		/**
		* Get the command term to show in the list of subcommands.
		*
		* @param {Command} cmd
		* @returns {string}
		*/
		subcommandTerm(cmd) {
			const args = cmd.registeredArguments.map((arg) => humanReadableArgName(arg)).join(" ");
			return cmd._name + (cmd._aliases[0] ? "|" + cmd._aliases[0] : "") + (cmd.options.length ? " [options]" : "") + (args ? " " + args : "");
		}
		/**
		* Get the option term to show in the list of options.
		*
		* @param {Option} option
		* @returns {string}
		*/
		optionTerm(option) {
			return option.flags;
		}
		/**
		* Get the argument term to show in the list of arguments.
		*
		* @param {Argument} argument
		* @returns {string}
		*/
		argumentTerm(argument) {
			return argument.name();
		}
		/**
		* Get the longest command term length.
		*
		* @param {Command} cmd
		* @param {Help} helper
		* @returns {number}
		*/
		longestSubcommandTermLength(cmd, helper) {
			return helper.visibleCommands(cmd).reduce((max, command) => {
				return Math.max(max, this.displayWidth(helper.styleSubcommandTerm(helper.subcommandTerm(command))));
			}, 0);
		}
		/**
		* Get the longest option term length.
		*
		* @param {Command} cmd
		* @param {Help} helper
		* @returns {number}
		*/
		longestOptionTermLength(cmd, helper) {
			return helper.visibleOptions(cmd).reduce((max, option) => {
				return Math.max(max, this.displayWidth(helper.styleOptionTerm(helper.optionTerm(option))));
			}, 0);
		}
		/**
		* Get the longest global option term length.
		*
		* @param {Command} cmd
		* @param {Help} helper
		* @returns {number}
		*/
		longestGlobalOptionTermLength(cmd, helper) {
			return helper.visibleGlobalOptions(cmd).reduce((max, option) => {
				return Math.max(max, this.displayWidth(helper.styleOptionTerm(helper.optionTerm(option))));
			}, 0);
		}
		/**
		* Get the longest argument term length.
		*
		* @param {Command} cmd
		* @param {Help} helper
		* @returns {number}
		*/
		longestArgumentTermLength(cmd, helper) {
			return helper.visibleArguments(cmd).reduce((max, argument) => {
				return Math.max(max, this.displayWidth(helper.styleArgumentTerm(helper.argumentTerm(argument))));
			}, 0);
		}
		/**
		* Get the command usage to be displayed at the top of the built-in help.
		*
		* @param {Command} cmd
		* @returns {string}
		*/
		commandUsage(cmd) {
			let cmdName = cmd._name;
			if (cmd._aliases[0]) cmdName = cmdName + "|" + cmd._aliases[0];
			let ancestorCmdNames = "";
			for (let ancestorCmd = cmd.parent; ancestorCmd; ancestorCmd = ancestorCmd.parent) ancestorCmdNames = ancestorCmd.name() + " " + ancestorCmdNames;
			return ancestorCmdNames + cmdName + " " + cmd.usage();
		}
		/**
		* Get the description for the command.
		*
		* @param {Command} cmd
		* @returns {string}
		*/
		commandDescription(cmd) {
			return cmd.description();
		}
		/**
		* Get the subcommand summary to show in the list of subcommands.
		* (Fallback to description for backwards compatibility.)
		*
		* @param {Command} cmd
		* @returns {string}
		*/
		subcommandDescription(cmd) {
			return cmd.summary() || cmd.description();
		}
		/**
		* Get the option description to show in the list of options.
		*
		* @param {Option} option
		* @return {string}
		*/
		optionDescription(option) {
			const extraInfo = [];
			if (option.argChoices) extraInfo.push(`choices: ${option.argChoices.map((choice) => JSON.stringify(choice)).join(", ")}`);
			if (option.defaultValue !== void 0) {
				if (option.required || option.optional || option.isBoolean() && typeof option.defaultValue === "boolean") extraInfo.push(`default: ${option.defaultValueDescription || JSON.stringify(option.defaultValue)}`);
			}
			if (option.presetArg !== void 0 && option.optional) extraInfo.push(`preset: ${JSON.stringify(option.presetArg)}`);
			if (option.envVar !== void 0) extraInfo.push(`env: ${option.envVar}`);
			if (extraInfo.length > 0) {
				const extraDescription = `(${extraInfo.join(", ")})`;
				if (option.description) return `${option.description} ${extraDescription}`;
				return extraDescription;
			}
			return option.description;
		}
		/**
		* Get the argument description to show in the list of arguments.
		*
		* @param {Argument} argument
		* @return {string}
		*/
		argumentDescription(argument) {
			const extraInfo = [];
			if (argument.argChoices) extraInfo.push(`choices: ${argument.argChoices.map((choice) => JSON.stringify(choice)).join(", ")}`);
			if (argument.defaultValue !== void 0) extraInfo.push(`default: ${argument.defaultValueDescription || JSON.stringify(argument.defaultValue)}`);
			if (extraInfo.length > 0) {
				const extraDescription = `(${extraInfo.join(", ")})`;
				if (argument.description) return `${argument.description} ${extraDescription}`;
				return extraDescription;
			}
			return argument.description;
		}
		/**
		* Format a list of items, given a heading and an array of formatted items.
		*
		* @param {string} heading
		* @param {string[]} items
		* @param {Help} helper
		* @returns string[]
		*/
		formatItemList(heading, items, helper) {
			if (items.length === 0) return [];
			return [
				helper.styleTitle(heading),
				...items,
				""
			];
		}
		/**
		* Group items by their help group heading.
		*
		* @param {Command[] | Option[]} unsortedItems
		* @param {Command[] | Option[]} visibleItems
		* @param {Function} getGroup
		* @returns {Map<string, Command[] | Option[]>}
		*/
		groupItems(unsortedItems, visibleItems, getGroup) {
			const result = /* @__PURE__ */ new Map();
			unsortedItems.forEach((item) => {
				const group = getGroup(item);
				if (!result.has(group)) result.set(group, []);
			});
			visibleItems.forEach((item) => {
				const group = getGroup(item);
				if (!result.has(group)) result.set(group, []);
				result.get(group).push(item);
			});
			return result;
		}
		/**
		* Generate the built-in help text.
		*
		* @param {Command} cmd
		* @param {Help} helper
		* @returns {string}
		*/
		formatHelp(cmd, helper) {
			const termWidth = helper.padWidth(cmd, helper);
			const helpWidth = helper.helpWidth ?? 80;
			function callFormatItem(term, description) {
				return helper.formatItem(term, termWidth, description, helper);
			}
			let output = [`${helper.styleTitle("Usage:")} ${helper.styleUsage(helper.commandUsage(cmd))}`, ""];
			const commandDescription = helper.commandDescription(cmd);
			if (commandDescription.length > 0) output = output.concat([helper.boxWrap(helper.styleCommandDescription(commandDescription), helpWidth), ""]);
			const argumentList = helper.visibleArguments(cmd).map((argument) => {
				return callFormatItem(helper.styleArgumentTerm(helper.argumentTerm(argument)), helper.styleArgumentDescription(helper.argumentDescription(argument)));
			});
			output = output.concat(this.formatItemList("Arguments:", argumentList, helper));
			this.groupItems(cmd.options, helper.visibleOptions(cmd), (option) => option.helpGroupHeading ?? "Options:").forEach((options, group) => {
				const optionList = options.map((option) => {
					return callFormatItem(helper.styleOptionTerm(helper.optionTerm(option)), helper.styleOptionDescription(helper.optionDescription(option)));
				});
				output = output.concat(this.formatItemList(group, optionList, helper));
			});
			if (helper.showGlobalOptions) {
				const globalOptionList = helper.visibleGlobalOptions(cmd).map((option) => {
					return callFormatItem(helper.styleOptionTerm(helper.optionTerm(option)), helper.styleOptionDescription(helper.optionDescription(option)));
				});
				output = output.concat(this.formatItemList("Global Options:", globalOptionList, helper));
			}
			this.groupItems(cmd.commands, helper.visibleCommands(cmd), (sub) => sub.helpGroup() || "Commands:").forEach((commands, group) => {
				const commandList = commands.map((sub) => {
					return callFormatItem(helper.styleSubcommandTerm(helper.subcommandTerm(sub)), helper.styleSubcommandDescription(helper.subcommandDescription(sub)));
				});
				output = output.concat(this.formatItemList(group, commandList, helper));
			});
			return output.join("\n");
		}
		/**
		* Return display width of string, ignoring ANSI escape sequences. Used in padding and wrapping calculations.
		*
		* @param {string} str
		* @returns {number}
		*/
		displayWidth(str) {
			return stripColor(str).length;
		}
		/**
		* Style the title for displaying in the help. Called with 'Usage:', 'Options:', etc.
		*
		* @param {string} str
		* @returns {string}
		*/
		styleTitle(str) {
			return str;
		}
		styleUsage(str) {
			return str.split(" ").map((word) => {
				if (word === "[options]") return this.styleOptionText(word);
				if (word === "[command]") return this.styleSubcommandText(word);
				if (word[0] === "[" || word[0] === "<") return this.styleArgumentText(word);
				return this.styleCommandText(word);
			}).join(" ");
		}
		styleCommandDescription(str) {
			return this.styleDescriptionText(str);
		}
		styleOptionDescription(str) {
			return this.styleDescriptionText(str);
		}
		styleSubcommandDescription(str) {
			return this.styleDescriptionText(str);
		}
		styleArgumentDescription(str) {
			return this.styleDescriptionText(str);
		}
		styleDescriptionText(str) {
			return str;
		}
		styleOptionTerm(str) {
			return this.styleOptionText(str);
		}
		styleSubcommandTerm(str) {
			return str.split(" ").map((word) => {
				if (word === "[options]") return this.styleOptionText(word);
				if (word[0] === "[" || word[0] === "<") return this.styleArgumentText(word);
				return this.styleSubcommandText(word);
			}).join(" ");
		}
		styleArgumentTerm(str) {
			return this.styleArgumentText(str);
		}
		styleOptionText(str) {
			return str;
		}
		styleArgumentText(str) {
			return str;
		}
		styleSubcommandText(str) {
			return str;
		}
		styleCommandText(str) {
			return str;
		}
		/**
		* Calculate the pad width from the maximum term length.
		*
		* @param {Command} cmd
		* @param {Help} helper
		* @returns {number}
		*/
		padWidth(cmd, helper) {
			return Math.max(helper.longestOptionTermLength(cmd, helper), helper.longestGlobalOptionTermLength(cmd, helper), helper.longestSubcommandTermLength(cmd, helper), helper.longestArgumentTermLength(cmd, helper));
		}
		/**
		* Detect manually wrapped and indented strings by checking for line break followed by whitespace.
		*
		* @param {string} str
		* @returns {boolean}
		*/
		preformatted(str) {
			return /\n[^\S\r\n]/.test(str);
		}
		/**
		* Format the "item", which consists of a term and description. Pad the term and wrap the description, indenting the following lines.
		*
		* So "TTT", 5, "DDD DDDD DD DDD" might be formatted for this.helpWidth=17 like so:
		*   TTT  DDD DDDD
		*        DD DDD
		*
		* @param {string} term
		* @param {number} termWidth
		* @param {string} description
		* @param {Help} helper
		* @returns {string}
		*/
		formatItem(term, termWidth, description, helper) {
			const itemIndent = 2;
			const itemIndentStr = " ".repeat(itemIndent);
			if (!description) return itemIndentStr + term;
			const paddedTerm = term.padEnd(termWidth + term.length - helper.displayWidth(term));
			const spacerWidth = 2;
			const remainingWidth = (this.helpWidth ?? 80) - termWidth - spacerWidth - itemIndent;
			let formattedDescription;
			if (remainingWidth < this.minWidthToWrap || helper.preformatted(description)) formattedDescription = description;
			else formattedDescription = helper.boxWrap(description, remainingWidth).replace(/\n/g, "\n" + " ".repeat(termWidth + spacerWidth));
			return itemIndentStr + paddedTerm + " ".repeat(spacerWidth) + formattedDescription.replace(/\n/g, `\n${itemIndentStr}`);
		}
		/**
		* Wrap a string at whitespace, preserving existing line breaks.
		* Wrapping is skipped if the width is less than `minWidthToWrap`.
		*
		* @param {string} str
		* @param {number} width
		* @returns {string}
		*/
		boxWrap(str, width) {
			if (width < this.minWidthToWrap) return str;
			const rawLines = str.split(/\r\n|\n/);
			const chunkPattern = /[\s]*[^\s]+/g;
			const wrappedLines = [];
			rawLines.forEach((line) => {
				const chunks = line.match(chunkPattern);
				if (chunks === null) {
					wrappedLines.push("");
					return;
				}
				let sumChunks = [chunks.shift()];
				let sumWidth = this.displayWidth(sumChunks[0]);
				chunks.forEach((chunk) => {
					const visibleWidth = this.displayWidth(chunk);
					if (sumWidth + visibleWidth <= width) {
						sumChunks.push(chunk);
						sumWidth += visibleWidth;
						return;
					}
					wrappedLines.push(sumChunks.join(""));
					const nextChunk = chunk.trimStart();
					sumChunks = [nextChunk];
					sumWidth = this.displayWidth(nextChunk);
				});
				wrappedLines.push(sumChunks.join(""));
			});
			return wrappedLines.join("\n");
		}
	};
	/**
	* Strip style ANSI escape sequences from the string. In particular, SGR (Select Graphic Rendition) codes.
	*
	* @param {string} str
	* @returns {string}
	* @package
	*/
	function stripColor(str) {
		return str.replace(/\x1b\[\d*(;\d*)*m/g, "");
	}
	exports.Help = Help;
	exports.stripColor = stripColor;
}));
// node_modules/commander/lib/option.js
var require_option = /* @__PURE__ */ __commonJSMin(((exports) => {
	const { InvalidArgumentError } = require_error();
	var Option = class {
		/**
		* Initialize a new `Option` with the given `flags` and `description`.
		*
		* @param {string} flags
		* @param {string} [description]
		*/
		constructor(flags, description) {
			this.flags = flags;
			this.description = description || "";
			this.required = flags.includes("<");
			this.optional = flags.includes("[");
			this.variadic = /\w\.\.\.[>\]]$/.test(flags);
			this.mandatory = false;
			const optionFlags = splitOptionFlags(flags);
			this.short = optionFlags.shortFlag;
			this.long = optionFlags.longFlag;
			this.negate = false;
			if (this.long) this.negate = this.long.startsWith("--no-");
			this.defaultValue = void 0;
			this.defaultValueDescription = void 0;
			this.presetArg = void 0;
			this.envVar = void 0;
			this.parseArg = void 0;
			this.hidden = false;
			this.argChoices = void 0;
			this.conflictsWith = [];
			this.implied = void 0;
			this.helpGroupHeading = void 0;
		}
		/**
		* Set the default value, and optionally supply the description to be displayed in the help.
		*
		* @param {*} value
		* @param {string} [description]
		* @return {Option}
		*/
		default(value, description) {
			this.defaultValue = value;
			this.defaultValueDescription = description;
			return this;
		}
		/**
		* Preset to use when option used without option-argument, especially optional but also boolean and negated.
		* The custom processing (parseArg) is called.
		*
		* @example
		* new Option('--color').default('GREYSCALE').preset('RGB');
		* new Option('--donate [amount]').preset('20').argParser(parseFloat);
		*
		* @param {*} arg
		* @return {Option}
		*/
		preset(arg) {
			this.presetArg = arg;
			return this;
		}
		/**
		* Add option name(s) that conflict with this option.
		* An error will be displayed if conflicting options are found during parsing.
		*
		* @example
		* new Option('--rgb').conflicts('cmyk');
		* new Option('--js').conflicts(['ts', 'jsx']);
		*
		* @param {(string | string[])} names
		* @return {Option}
		*/
		conflicts(names) {
			this.conflictsWith = this.conflictsWith.concat(names);
			return this;
		}
		/**
		* Specify implied option values for when this option is set and the implied options are not.
		*
		* The custom processing (parseArg) is not called on the implied values.
		*
		* @example
		* program
		*   .addOption(new Option('--log', 'write logging information to file'))
		*   .addOption(new Option('--trace', 'log extra details').implies({ log: 'trace.txt' }));
		*
		* @param {object} impliedOptionValues
		* @return {Option}
		*/
		implies(impliedOptionValues) {
			let newImplied = impliedOptionValues;
			if (typeof impliedOptionValues === "string") newImplied = { [impliedOptionValues]: true };
			this.implied = Object.assign(this.implied || {}, newImplied);
			return this;
		}
		/**
		* Set environment variable to check for option value.
		*
		* An environment variable is only used if when processed the current option value is
		* undefined, or the source of the current value is 'default' or 'config' or 'env'.
		*
		* @param {string} name
		* @return {Option}
		*/
		env(name) {
			this.envVar = name;
			return this;
		}
		/**
		* Set the custom handler for processing CLI option arguments into option values.
		*
		* @param {Function} [fn]
		* @return {Option}
		*/
		argParser(fn) {
			this.parseArg = fn;
			return this;
		}
		/**
		* Whether the option is mandatory and must have a value after parsing.
		*
		* @param {boolean} [mandatory=true]
		* @return {Option}
		*/
		makeOptionMandatory(mandatory = true) {
			this.mandatory = !!mandatory;
			return this;
		}
		/**
		* Hide option in help.
		*
		* @param {boolean} [hide=true]
		* @return {Option}
		*/
		hideHelp(hide = true) {
			this.hidden = !!hide;
			return this;
		}
		/**
		* @package
		*/
		_collectValue(value, previous) {
			if (previous === this.defaultValue || !Array.isArray(previous)) return [value];
			previous.push(value);
			return previous;
		}
		/**
		* Only allow option value to be one of choices.
		*
		* @param {string[]} values
		* @return {Option}
		*/
		choices(values) {
			this.argChoices = values.slice();
			this.parseArg = (arg, previous) => {
				if (!this.argChoices.includes(arg)) throw new InvalidArgumentError(`Allowed choices are ${this.argChoices.join(", ")}.`);
				if (this.variadic) return this._collectValue(arg, previous);
				return arg;
			};
			return this;
		}
		/**
		* Return option name.
		*
		* @return {string}
		*/
		name() {
			if (this.long) return this.long.replace(/^--/, "");
			return this.short.replace(/^-/, "");
		}
		/**
		* Return option name, in a camelcase format that can be used
		* as an object attribute key.
		*
		* @return {string}
		*/
		attributeName() {
			if (this.negate) return camelcase(this.name().replace(/^no-/, ""));
			return camelcase(this.name());
		}
		/**
		* Set the help group heading.
		*
		* @param {string} heading
		* @return {Option}
		*/
		helpGroup(heading) {
			this.helpGroupHeading = heading;
			return this;
		}
		/**
		* Check if `arg` matches the short or long flag.
		*
		* @param {string} arg
		* @return {boolean}
		* @package
		*/
		is(arg) {
			return this.short === arg || this.long === arg;
		}
		/**
		* Return whether a boolean option.
		*
		* Options are one of boolean, negated, required argument, or optional argument.
		*
		* @return {boolean}
		* @package
		*/
		isBoolean() {
			return !this.required && !this.optional && !this.negate;
		}
	};
	/**
	* This class is to make it easier to work with dual options, without changing the existing
	* implementation. We support separate dual options for separate positive and negative options,
	* like `--build` and `--no-build`, which share a single option value. This works nicely for some
	* use cases, but is tricky for others where we want separate behaviours despite
	* the single shared option value.
	*/
	var DualOptions = class {
		/**
		* @param {Option[]} options
		*/
		constructor(options) {
			this.positiveOptions = /* @__PURE__ */ new Map();
			this.negativeOptions = /* @__PURE__ */ new Map();
			this.dualOptions = /* @__PURE__ */ new Set();
			options.forEach((option) => {
				if (option.negate) this.negativeOptions.set(option.attributeName(), option);
				else this.positiveOptions.set(option.attributeName(), option);
			});
			this.negativeOptions.forEach((value, key) => {
				if (this.positiveOptions.has(key)) this.dualOptions.add(key);
			});
		}
		/**
		* Did the value come from the option, and not from possible matching dual option?
		*
		* @param {*} value
		* @param {Option} option
		* @returns {boolean}
		*/
		valueFromOption(value, option) {
			const optionKey = option.attributeName();
			if (!this.dualOptions.has(optionKey)) return true;
			const preset = this.negativeOptions.get(optionKey).presetArg;
			const negativeValue = preset !== void 0 ? preset : false;
			return option.negate === (negativeValue === value);
		}
	};
	/**
	* Convert string from kebab-case to camelCase.
	*
	* @param {string} str
	* @return {string}
	* @private
	*/
	function camelcase(str) {
		return str.split("-").reduce((str, word) => {
			return str + word[0].toUpperCase() + word.slice(1);
		});
	}
	/**
	* Split the short and long flag out of something like '-m,--mixed <value>'
	*
	* @private
	*/
	function splitOptionFlags(flags) {
		let shortFlag;
		let longFlag;
		const shortFlagExp = /^-[^-]$/;
		const longFlagExp = /^--[^-]/;
		const flagParts = flags.split(/[ |,]+/).concat("guard");
		if (shortFlagExp.test(flagParts[0])) shortFlag = flagParts.shift();
		if (longFlagExp.test(flagParts[0])) longFlag = flagParts.shift();
		if (!shortFlag && shortFlagExp.test(flagParts[0])) shortFlag = flagParts.shift();
		if (!shortFlag && longFlagExp.test(flagParts[0])) {
			shortFlag = longFlag;
			longFlag = flagParts.shift();
		}
		if (flagParts[0].startsWith("-")) {
			const unsupportedFlag = flagParts[0];
			const baseError = `option creation failed due to '${unsupportedFlag}' in option flags '${flags}'`;
			if (/^-[^-][^-]/.test(unsupportedFlag)) throw new Error(`${baseError}
- a short flag is a single dash and a single character
  - either use a single dash and a single character (for a short flag)
  - or use a double dash for a long option (and can have two, like '--ws, --workspace')`);
			if (shortFlagExp.test(unsupportedFlag)) throw new Error(`${baseError}
- too many short flags`);
			if (longFlagExp.test(unsupportedFlag)) throw new Error(`${baseError}
- too many long flags`);
			throw new Error(`${baseError}
- unrecognised flag format`);
		}
		if (shortFlag === void 0 && longFlag === void 0) throw new Error(`option creation failed due to no flags found in '${flags}'.`);
		return {
			shortFlag,
			longFlag
		};
	}
	exports.Option = Option;
	exports.DualOptions = DualOptions;
}));
// node_modules/commander/lib/suggestSimilar.js
var require_suggestSimilar = /* @__PURE__ */ __commonJSMin(((exports) => {
	const maxDistance = 3;
	function editDistance(a, b) {
		if (Math.abs(a.length - b.length) > maxDistance) return Math.max(a.length, b.length);
		const d = [];
		for (let i = 0; i <= a.length; i++) d[i] = [i];
		for (let j = 0; j <= b.length; j++) d[0][j] = j;
		for (let j = 1; j <= b.length; j++) for (let i = 1; i <= a.length; i++) {
			let cost = 1;
			if (a[i - 1] === b[j - 1]) cost = 0;
			else cost = 1;
			d[i][j] = Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + cost);
			if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
		}
		return d[a.length][b.length];
	}
	/**
	* Find close matches, restricted to same number of edits.
	*
	* @param {string} word
	* @param {string[]} candidates
	* @returns {string}
	*/
	function suggestSimilar(word, candidates) {
		if (!candidates || candidates.length === 0) return "";
		candidates = Array.from(new Set(candidates));
		const searchingOptions = word.startsWith("--");
		if (searchingOptions) {
			word = word.slice(2);
			candidates = candidates.map((candidate) => candidate.slice(2));
		}
		let similar = [];
		let bestDistance = maxDistance;
		const minSimilarity = .4;
		candidates.forEach((candidate) => {
			if (candidate.length <= 1) return;
			const distance = editDistance(word, candidate);
			const length = Math.max(word.length, candidate.length);
			if ((length - distance) / length > minSimilarity) {
				if (distance < bestDistance) {
					bestDistance = distance;
					similar = [candidate];
				} else if (distance === bestDistance) similar.push(candidate);
			}
		});
		similar.sort((a, b) => a.localeCompare(b));
		if (searchingOptions) similar = similar.map((candidate) => `--${candidate}`);
		if (similar.length > 1) return `\n(Did you mean one of ${similar.join(", ")}?)`;
		if (similar.length === 1) return `\n(Did you mean ${similar[0]}?)`;
		return "";
	}
	exports.suggestSimilar = suggestSimilar;
}));
// node_modules/commander/lib/command.js
var require_command = /* @__PURE__ */ __commonJSMin(((exports) => {
	const EventEmitter = __require("node:events").EventEmitter;
	const childProcess = __require("node:child_process");
	const path = __require("node:path");
	const fs = __require("node:fs");
	const process = __require("node:process");
	const { Argument, humanReadableArgName } = require_argument();
	const { CommanderError } = require_error();
	const { Help, stripColor } = require_help();
	const { Option, DualOptions } = require_option();
	const { suggestSimilar } = require_suggestSimilar();
	var Command = class Command extends EventEmitter {
		/**
		* Initialize a new `Command`.
		*
		* @param {string} [name]
		*/
		constructor(name) {
			super();
			/** @type {Command[]} */
			this.commands = [];
			/** @type {Option[]} */
			this.options = [];
			this.parent = null;
			this._allowUnknownOption = false;
			this._allowExcessArguments = false;
			/** @type {Argument[]} */
			this.registeredArguments = [];
			this._args = this.registeredArguments;
			/** @type {string[]} */
			this.args = [];
			this.rawArgs = [];
			this.processedArgs = [];
			this._scriptPath = null;
			this._name = name || "";
			this._optionValues = {};
			this._optionValueSources = {};
			this._storeOptionsAsProperties = false;
			this._actionHandler = null;
			this._executableHandler = false;
			this._executableFile = null;
			this._executableDir = null;
			this._defaultCommandName = null;
			this._exitCallback = null;
			this._aliases = [];
			this._combineFlagAndOptionalValue = true;
			this._description = "";
			this._summary = "";
			this._argsDescription = void 0;
			this._enablePositionalOptions = false;
			this._passThroughOptions = false;
			this._lifeCycleHooks = {};
			/** @type {(boolean | string)} */
			this._showHelpAfterError = false;
			this._showSuggestionAfterError = true;
			this._savedState = null;
			this._outputConfiguration = {
				writeOut: (str) => process.stdout.write(str),
				writeErr: (str) => process.stderr.write(str),
				outputError: (str, write) => write(str),
				getOutHelpWidth: () => process.stdout.isTTY ? process.stdout.columns : void 0,
				getErrHelpWidth: () => process.stderr.isTTY ? process.stderr.columns : void 0,
				getOutHasColors: () => useColor() ?? (process.stdout.isTTY && process.stdout.hasColors?.()),
				getErrHasColors: () => useColor() ?? (process.stderr.isTTY && process.stderr.hasColors?.()),
				stripColor: (str) => stripColor(str)
			};
			this._hidden = false;
			/** @type {(Option | null | undefined)} */
			this._helpOption = void 0;
			this._addImplicitHelpCommand = void 0;
			/** @type {Command} */
			this._helpCommand = void 0;
			this._helpConfiguration = {};
			/** @type {string | undefined} */
			this._helpGroupHeading = void 0;
			/** @type {string | undefined} */
			this._defaultCommandGroup = void 0;
			/** @type {string | undefined} */
			this._defaultOptionGroup = void 0;
		}
		/**
		* Copy settings that are useful to have in common across root command and subcommands.
		*
		* (Used internally when adding a command using `.command()` so subcommands inherit parent settings.)
		*
		* @param {Command} sourceCommand
		* @return {Command} `this` command for chaining
		*/
		copyInheritedSettings(sourceCommand) {
			this._outputConfiguration = sourceCommand._outputConfiguration;
			this._helpOption = sourceCommand._helpOption;
			this._helpCommand = sourceCommand._helpCommand;
			this._helpConfiguration = sourceCommand._helpConfiguration;
			this._exitCallback = sourceCommand._exitCallback;
			this._storeOptionsAsProperties = sourceCommand._storeOptionsAsProperties;
			this._combineFlagAndOptionalValue = sourceCommand._combineFlagAndOptionalValue;
			this._allowExcessArguments = sourceCommand._allowExcessArguments;
			this._enablePositionalOptions = sourceCommand._enablePositionalOptions;
			this._showHelpAfterError = sourceCommand._showHelpAfterError;
			this._showSuggestionAfterError = sourceCommand._showSuggestionAfterError;
			return this;
		}
		/**
		* @returns {Command[]}
		* @private
		*/
		_getCommandAndAncestors() {
			const result = [];
			for (let command = this; command; command = command.parent) result.push(command);
			return result;
		}
		/**
		* Define a command.
		*
		* There are two styles of command: pay attention to where to put the description.
		*
		* @example
		* // Command implemented using action handler (description is supplied separately to `.command`)
		* program
		*   .command('clone <source> [destination]')
		*   .description('clone a repository into a newly created directory')
		*   .action((source, destination) => {
		*     console.log('clone command called');
		*   });
		*
		* // Command implemented using separate executable file (description is second parameter to `.command`)
		* program
		*   .command('start <service>', 'start named service')
		*   .command('stop [service]', 'stop named service, or all if no name supplied');
		*
		* @param {string} nameAndArgs - command name and arguments, args are `<required>` or `[optional]` and last may also be `variadic...`
		* @param {(object | string)} [actionOptsOrExecDesc] - configuration options (for action), or description (for executable)
		* @param {object} [execOpts] - configuration options (for executable)
		* @return {Command} returns new command for action handler, or `this` for executable command
		*/
		command(nameAndArgs, actionOptsOrExecDesc, execOpts) {
			let desc = actionOptsOrExecDesc;
			let opts = execOpts;
			if (typeof desc === "object" && desc !== null) {
				opts = desc;
				desc = null;
			}
			opts = opts || {};
			const [, name, args] = nameAndArgs.match(/([^ ]+) *(.*)/);
			const cmd = this.createCommand(name);
			if (desc) {
				cmd.description(desc);
				cmd._executableHandler = true;
			}
			if (opts.isDefault) this._defaultCommandName = cmd._name;
			cmd._hidden = !!(opts.noHelp || opts.hidden);
			cmd._executableFile = opts.executableFile || null;
			if (args) cmd.arguments(args);
			this._registerCommand(cmd);
			cmd.parent = this;
			cmd.copyInheritedSettings(this);
			if (desc) return this;
			return cmd;
		}
		/**
		* Factory routine to create a new unattached command.
		*
		* See .command() for creating an attached subcommand, which uses this routine to
		* create the command. You can override createCommand to customise subcommands.
		*
		* @param {string} [name]
		* @return {Command} new command
		*/
		createCommand(name) {
			return new Command(name);
		}
		/**
		* You can customise the help with a subclass of Help by overriding createHelp,
		* or by overriding Help properties using configureHelp().
		*
		* @return {Help}
		*/
		createHelp() {
			return Object.assign(new Help(), this.configureHelp());
		}
		/**
		* You can customise the help by overriding Help properties using configureHelp(),
		* or with a subclass of Help by overriding createHelp().
		*
		* @param {object} [configuration] - configuration options
		* @return {(Command | object)} `this` command for chaining, or stored configuration
		*/
		configureHelp(configuration) {
			if (configuration === void 0) return this._helpConfiguration;
			this._helpConfiguration = configuration;
			return this;
		}
		/**
		* The default output goes to stdout and stderr. You can customise this for special
		* applications. You can also customise the display of errors by overriding outputError.
		*
		* The configuration properties are all functions:
		*
		*     // change how output being written, defaults to stdout and stderr
		*     writeOut(str)
		*     writeErr(str)
		*     // change how output being written for errors, defaults to writeErr
		*     outputError(str, write) // used for displaying errors and not used for displaying help
		*     // specify width for wrapping help
		*     getOutHelpWidth()
		*     getErrHelpWidth()
		*     // color support, currently only used with Help
		*     getOutHasColors()
		*     getErrHasColors()
		*     stripColor() // used to remove ANSI escape codes if output does not have colors
		*
		* @param {object} [configuration] - configuration options
		* @return {(Command | object)} `this` command for chaining, or stored configuration
		*/
		configureOutput(configuration) {
			if (configuration === void 0) return this._outputConfiguration;
			this._outputConfiguration = {
				...this._outputConfiguration,
				...configuration
			};
			return this;
		}
		/**
		* Display the help or a custom message after an error occurs.
		*
		* @param {(boolean|string)} [displayHelp]
		* @return {Command} `this` command for chaining
		*/
		showHelpAfterError(displayHelp = true) {
			if (typeof displayHelp !== "string") displayHelp = !!displayHelp;
			this._showHelpAfterError = displayHelp;
			return this;
		}
		/**
		* Display suggestion of similar commands for unknown commands, or options for unknown options.
		*
		* @param {boolean} [displaySuggestion]
		* @return {Command} `this` command for chaining
		*/
		showSuggestionAfterError(displaySuggestion = true) {
			this._showSuggestionAfterError = !!displaySuggestion;
			return this;
		}
		/**
		* Add a prepared subcommand.
		*
		* See .command() for creating an attached subcommand which inherits settings from its parent.
		*
		* @param {Command} cmd - new subcommand
		* @param {object} [opts] - configuration options
		* @return {Command} `this` command for chaining
		*/
		addCommand(cmd, opts) {
			if (!cmd._name) throw new Error(`Command passed to .addCommand() must have a name
- specify the name in Command constructor or using .name()`);
			opts = opts || {};
			if (opts.isDefault) this._defaultCommandName = cmd._name;
			if (opts.noHelp || opts.hidden) cmd._hidden = true;
			this._registerCommand(cmd);
			cmd.parent = this;
			cmd._checkForBrokenPassThrough();
			return this;
		}
		/**
		* Factory routine to create a new unattached argument.
		*
		* See .argument() for creating an attached argument, which uses this routine to
		* create the argument. You can override createArgument to return a custom argument.
		*
		* @param {string} name
		* @param {string} [description]
		* @return {Argument} new argument
		*/
		createArgument(name, description) {
			return new Argument(name, description);
		}
		/**
		* Define argument syntax for command.
		*
		* The default is that the argument is required, and you can explicitly
		* indicate this with <> around the name. Put [] around the name for an optional argument.
		*
		* @example
		* program.argument('<input-file>');
		* program.argument('[output-file]');
		*
		* @param {string} name
		* @param {string} [description]
		* @param {(Function|*)} [parseArg] - custom argument processing function or default value
		* @param {*} [defaultValue]
		* @return {Command} `this` command for chaining
		*/
		argument(name, description, parseArg, defaultValue) {
			const argument = this.createArgument(name, description);
			if (typeof parseArg === "function") argument.default(defaultValue).argParser(parseArg);
			else argument.default(parseArg);
			this.addArgument(argument);
			return this;
		}
		/**
		* Define argument syntax for command, adding multiple at once (without descriptions).
		*
		* See also .argument().
		*
		* @example
		* program.arguments('<cmd> [env]');
		*
		* @param {string} names
		* @return {Command} `this` command for chaining
		*/
		arguments(names) {
			names.trim().split(/ +/).forEach((detail) => {
				this.argument(detail);
			});
			return this;
		}
		/**
		* Define argument syntax for command, adding a prepared argument.
		*
		* @param {Argument} argument
		* @return {Command} `this` command for chaining
		*/
		addArgument(argument) {
			const previousArgument = this.registeredArguments.slice(-1)[0];
			if (previousArgument?.variadic) throw new Error(`only the last argument can be variadic '${previousArgument.name()}'`);
			if (argument.required && argument.defaultValue !== void 0 && argument.parseArg === void 0) throw new Error(`a default value for a required argument is never used: '${argument.name()}'`);
			this.registeredArguments.push(argument);
			return this;
		}
		/**
		* Customise or override default help command. By default a help command is automatically added if your command has subcommands.
		*
		* @example
		*    program.helpCommand('help [cmd]');
		*    program.helpCommand('help [cmd]', 'show help');
		*    program.helpCommand(false); // suppress default help command
		*    program.helpCommand(true); // add help command even if no subcommands
		*
		* @param {string|boolean} enableOrNameAndArgs - enable with custom name and/or arguments, or boolean to override whether added
		* @param {string} [description] - custom description
		* @return {Command} `this` command for chaining
		*/
		helpCommand(enableOrNameAndArgs, description) {
			if (typeof enableOrNameAndArgs === "boolean") {
				this._addImplicitHelpCommand = enableOrNameAndArgs;
				if (enableOrNameAndArgs && this._defaultCommandGroup) this._initCommandGroup(this._getHelpCommand());
				return this;
			}
			const [, helpName, helpArgs] = (enableOrNameAndArgs ?? "help [command]").match(/([^ ]+) *(.*)/);
			const helpDescription = description ?? "display help for command";
			const helpCommand = this.createCommand(helpName);
			helpCommand.helpOption(false);
			if (helpArgs) helpCommand.arguments(helpArgs);
			if (helpDescription) helpCommand.description(helpDescription);
			this._addImplicitHelpCommand = true;
			this._helpCommand = helpCommand;
			if (enableOrNameAndArgs || description) this._initCommandGroup(helpCommand);
			return this;
		}
		/**
		* Add prepared custom help command.
		*
		* @param {(Command|string|boolean)} helpCommand - custom help command, or deprecated enableOrNameAndArgs as for `.helpCommand()`
		* @param {string} [deprecatedDescription] - deprecated custom description used with custom name only
		* @return {Command} `this` command for chaining
		*/
		addHelpCommand(helpCommand, deprecatedDescription) {
			if (typeof helpCommand !== "object") {
				this.helpCommand(helpCommand, deprecatedDescription);
				return this;
			}
			this._addImplicitHelpCommand = true;
			this._helpCommand = helpCommand;
			this._initCommandGroup(helpCommand);
			return this;
		}
		/**
		* Lazy create help command.
		*
		* @return {(Command|null)}
		* @package
		*/
		_getHelpCommand() {
			if (this._addImplicitHelpCommand ?? (this.commands.length && !this._actionHandler && !this._findCommand("help"))) {
				if (this._helpCommand === void 0) this.helpCommand(void 0, void 0);
				return this._helpCommand;
			}
			return null;
		}
		/**
		* Add hook for life cycle event.
		*
		* @param {string} event
		* @param {Function} listener
		* @return {Command} `this` command for chaining
		*/
		hook(event, listener) {
			const allowedValues = [
				"preSubcommand",
				"preAction",
				"postAction"
			];
			if (!allowedValues.includes(event)) throw new Error(`Unexpected value for event passed to hook : '${event}'.
Expecting one of '${allowedValues.join("', '")}'`);
			if (this._lifeCycleHooks[event]) this._lifeCycleHooks[event].push(listener);
			else this._lifeCycleHooks[event] = [listener];
			return this;
		}
		/**
		* Register callback to use as replacement for calling process.exit.
		*
		* @param {Function} [fn] optional callback which will be passed a CommanderError, defaults to throwing
		* @return {Command} `this` command for chaining
		*/
		exitOverride(fn) {
			if (fn) this._exitCallback = fn;
			else this._exitCallback = (err) => {
				if (err.code !== "commander.executeSubCommandAsync") throw err;
			};
			return this;
		}
		/**
		* Call process.exit, and _exitCallback if defined.
		*
		* @param {number} exitCode exit code for using with process.exit
		* @param {string} code an id string representing the error
		* @param {string} message human-readable description of the error
		* @return never
		* @private
		*/
		_exit(exitCode, code, message) {
			if (this._exitCallback) this._exitCallback(new CommanderError(exitCode, code, message));
			process.exit(exitCode);
		}
		/**
		* Register callback `fn` for the command.
		*
		* @example
		* program
		*   .command('serve')
		*   .description('start service')
		*   .action(function() {
		*      // do work here
		*   });
		*
		* @param {Function} fn
		* @return {Command} `this` command for chaining
		*/
		action(fn) {
			const listener = (args) => {
				const expectedArgsCount = this.registeredArguments.length;
				const actionArgs = args.slice(0, expectedArgsCount);
				if (this._storeOptionsAsProperties) actionArgs[expectedArgsCount] = this;
				else actionArgs[expectedArgsCount] = this.opts();
				actionArgs.push(this);
				return fn.apply(this, actionArgs);
			};
			this._actionHandler = listener;
			return this;
		}
		/**
		* Factory routine to create a new unattached option.
		*
		* See .option() for creating an attached option, which uses this routine to
		* create the option. You can override createOption to return a custom option.
		*
		* @param {string} flags
		* @param {string} [description]
		* @return {Option} new option
		*/
		createOption(flags, description) {
			return new Option(flags, description);
		}
		/**
		* Wrap parseArgs to catch 'commander.invalidArgument'.
		*
		* @param {(Option | Argument)} target
		* @param {string} value
		* @param {*} previous
		* @param {string} invalidArgumentMessage
		* @private
		*/
		_callParseArg(target, value, previous, invalidArgumentMessage) {
			try {
				return target.parseArg(value, previous);
			} catch (err) {
				if (err.code === "commander.invalidArgument") {
					const message = `${invalidArgumentMessage} ${err.message}`;
					this.error(message, {
						exitCode: err.exitCode,
						code: err.code
					});
				}
				throw err;
			}
		}
		/**
		* Check for option flag conflicts.
		* Register option if no conflicts found, or throw on conflict.
		*
		* @param {Option} option
		* @private
		*/
		_registerOption(option) {
			const matchingOption = option.short && this._findOption(option.short) || option.long && this._findOption(option.long);
			if (matchingOption) {
				const matchingFlag = option.long && this._findOption(option.long) ? option.long : option.short;
				throw new Error(`Cannot add option '${option.flags}'${this._name && ` to command '${this._name}'`} due to conflicting flag '${matchingFlag}'
-  already used by option '${matchingOption.flags}'`);
			}
			this._initOptionGroup(option);
			this.options.push(option);
		}
		/**
		* Check for command name and alias conflicts with existing commands.
		* Register command if no conflicts found, or throw on conflict.
		*
		* @param {Command} command
		* @private
		*/
		_registerCommand(command) {
			const knownBy = (cmd) => {
				return [cmd.name()].concat(cmd.aliases());
			};
			const alreadyUsed = knownBy(command).find((name) => this._findCommand(name));
			if (alreadyUsed) {
				const existingCmd = knownBy(this._findCommand(alreadyUsed)).join("|");
				const newCmd = knownBy(command).join("|");
				throw new Error(`cannot add command '${newCmd}' as already have command '${existingCmd}'`);
			}
			this._initCommandGroup(command);
			this.commands.push(command);
		}
		/**
		* Add an option.
		*
		* @param {Option} option
		* @return {Command} `this` command for chaining
		*/
		addOption(option) {
			this._registerOption(option);
			const oname = option.name();
			const name = option.attributeName();
			if (option.negate) {
				const positiveLongFlag = option.long.replace(/^--no-/, "--");
				if (!this._findOption(positiveLongFlag)) this.setOptionValueWithSource(name, option.defaultValue === void 0 ? true : option.defaultValue, "default");
			} else if (option.defaultValue !== void 0) this.setOptionValueWithSource(name, option.defaultValue, "default");
			const handleOptionValue = (val, invalidValueMessage, valueSource) => {
				if (val == null && option.presetArg !== void 0) val = option.presetArg;
				const oldValue = this.getOptionValue(name);
				if (val !== null && option.parseArg) val = this._callParseArg(option, val, oldValue, invalidValueMessage);
				else if (val !== null && option.variadic) val = option._collectValue(val, oldValue);
				if (val == null) {
					if (option.negate) val = false;
					else if (option.isBoolean() || option.optional) val = true;
					else val = "";
				}
				this.setOptionValueWithSource(name, val, valueSource);
			};
			this.on("option:" + oname, (val) => {
				const invalidValueMessage = `error: option '${option.flags}' argument '${val}' is invalid.`;
				handleOptionValue(val, invalidValueMessage, "cli");
			});
			if (option.envVar) this.on("optionEnv:" + oname, (val) => {
				const invalidValueMessage = `error: option '${option.flags}' value '${val}' from env '${option.envVar}' is invalid.`;
				handleOptionValue(val, invalidValueMessage, "env");
			});
			return this;
		}
		/**
		* Internal implementation shared by .option() and .requiredOption()
		*
		* @return {Command} `this` command for chaining
		* @private
		*/
		_optionEx(config, flags, description, fn, defaultValue) {
			if (typeof flags === "object" && flags instanceof Option) throw new Error("To add an Option object use addOption() instead of option() or requiredOption()");
			const option = this.createOption(flags, description);
			option.makeOptionMandatory(!!config.mandatory);
			if (typeof fn === "function") option.default(defaultValue).argParser(fn);
			else if (fn instanceof RegExp) {
				const regex = fn;
				fn = (val, def) => {
					const m = regex.exec(val);
					return m ? m[0] : def;
				};
				option.default(defaultValue).argParser(fn);
			} else option.default(fn);
			return this.addOption(option);
		}
		/**
		* Define option with `flags`, `description`, and optional argument parsing function or `defaultValue` or both.
		*
		* The `flags` string contains the short and/or long flags, separated by comma, a pipe or space. A required
		* option-argument is indicated by `<>` and an optional option-argument by `[]`.
		*
		* See the README for more details, and see also addOption() and requiredOption().
		*
		* @example
		* program
		*     .option('-p, --pepper', 'add pepper')
		*     .option('--pt, --pizza-type <TYPE>', 'type of pizza') // required option-argument
		*     .option('-c, --cheese [CHEESE]', 'add extra cheese', 'mozzarella') // optional option-argument with default
		*     .option('-t, --tip <VALUE>', 'add tip to purchase cost', parseFloat) // custom parse function
		*
		* @param {string} flags
		* @param {string} [description]
		* @param {(Function|*)} [parseArg] - custom option processing function or default value
		* @param {*} [defaultValue]
		* @return {Command} `this` command for chaining
		*/
		option(flags, description, parseArg, defaultValue) {
			return this._optionEx({}, flags, description, parseArg, defaultValue);
		}
		/**
		* Add a required option which must have a value after parsing. This usually means
		* the option must be specified on the command line. (Otherwise the same as .option().)
		*
		* The `flags` string contains the short and/or long flags, separated by comma, a pipe or space.
		*
		* @param {string} flags
		* @param {string} [description]
		* @param {(Function|*)} [parseArg] - custom option processing function or default value
		* @param {*} [defaultValue]
		* @return {Command} `this` command for chaining
		*/
		requiredOption(flags, description, parseArg, defaultValue) {
			return this._optionEx({ mandatory: true }, flags, description, parseArg, defaultValue);
		}
		/**
		* Alter parsing of short flags with optional values.
		*
		* @example
		* // for `.option('-f,--flag [value]'):
		* program.combineFlagAndOptionalValue(true);  // `-f80` is treated like `--flag=80`, this is the default behaviour
		* program.combineFlagAndOptionalValue(false) // `-fb` is treated like `-f -b`
		*
		* @param {boolean} [combine] - if `true` or omitted, an optional value can be specified directly after the flag.
		* @return {Command} `this` command for chaining
		*/
		combineFlagAndOptionalValue(combine = true) {
			this._combineFlagAndOptionalValue = !!combine;
			return this;
		}
		/**
		* Allow unknown options on the command line.
		*
		* @param {boolean} [allowUnknown] - if `true` or omitted, no error will be thrown for unknown options.
		* @return {Command} `this` command for chaining
		*/
		allowUnknownOption(allowUnknown = true) {
			this._allowUnknownOption = !!allowUnknown;
			return this;
		}
		/**
		* Allow excess command-arguments on the command line. Pass false to make excess arguments an error.
		*
		* @param {boolean} [allowExcess] - if `true` or omitted, no error will be thrown for excess arguments.
		* @return {Command} `this` command for chaining
		*/
		allowExcessArguments(allowExcess = true) {
			this._allowExcessArguments = !!allowExcess;
			return this;
		}
		/**
		* Enable positional options. Positional means global options are specified before subcommands which lets
		* subcommands reuse the same option names, and also enables subcommands to turn on passThroughOptions.
		* The default behaviour is non-positional and global options may appear anywhere on the command line.
		*
		* @param {boolean} [positional]
		* @return {Command} `this` command for chaining
		*/
		enablePositionalOptions(positional = true) {
			this._enablePositionalOptions = !!positional;
			return this;
		}
		/**
		* Pass through options that come after command-arguments rather than treat them as command-options,
		* so actual command-options come before command-arguments. Turning this on for a subcommand requires
		* positional options to have been enabled on the program (parent commands).
		* The default behaviour is non-positional and options may appear before or after command-arguments.
		*
		* @param {boolean} [passThrough] for unknown options.
		* @return {Command} `this` command for chaining
		*/
		passThroughOptions(passThrough = true) {
			this._passThroughOptions = !!passThrough;
			this._checkForBrokenPassThrough();
			return this;
		}
		/**
		* @private
		*/
		_checkForBrokenPassThrough() {
			if (this.parent && this._passThroughOptions && !this.parent._enablePositionalOptions) throw new Error(`passThroughOptions cannot be used for '${this._name}' without turning on enablePositionalOptions for parent command(s)`);
		}
		/**
		* Whether to store option values as properties on command object,
		* or store separately (specify false). In both cases the option values can be accessed using .opts().
		*
		* @param {boolean} [storeAsProperties=true]
		* @return {Command} `this` command for chaining
		*/
		storeOptionsAsProperties(storeAsProperties = true) {
			if (this.options.length) throw new Error("call .storeOptionsAsProperties() before adding options");
			if (Object.keys(this._optionValues).length) throw new Error("call .storeOptionsAsProperties() before setting option values");
			this._storeOptionsAsProperties = !!storeAsProperties;
			return this;
		}
		/**
		* Retrieve option value.
		*
		* @param {string} key
		* @return {object} value
		*/
		getOptionValue(key) {
			if (this._storeOptionsAsProperties) return this[key];
			return this._optionValues[key];
		}
		/**
		* Store option value.
		*
		* @param {string} key
		* @param {object} value
		* @return {Command} `this` command for chaining
		*/
		setOptionValue(key, value) {
			return this.setOptionValueWithSource(key, value, void 0);
		}
		/**
		* Store option value and where the value came from.
		*
		* @param {string} key
		* @param {object} value
		* @param {string} source - expected values are default/config/env/cli/implied
		* @return {Command} `this` command for chaining
		*/
		setOptionValueWithSource(key, value, source) {
			if (this._storeOptionsAsProperties) this[key] = value;
			else this._optionValues[key] = value;
			this._optionValueSources[key] = source;
			return this;
		}
		/**
		* Get source of option value.
		* Expected values are default | config | env | cli | implied
		*
		* @param {string} key
		* @return {string}
		*/
		getOptionValueSource(key) {
			return this._optionValueSources[key];
		}
		/**
		* Get source of option value. See also .optsWithGlobals().
		* Expected values are default | config | env | cli | implied
		*
		* @param {string} key
		* @return {string}
		*/
		getOptionValueSourceWithGlobals(key) {
			let source;
			this._getCommandAndAncestors().forEach((cmd) => {
				if (cmd.getOptionValueSource(key) !== void 0) source = cmd.getOptionValueSource(key);
			});
			return source;
		}
		/**
		* Get user arguments from implied or explicit arguments.
		* Side-effects: set _scriptPath if args included script. Used for default program name, and subcommand searches.
		*
		* @private
		*/
		_prepareUserArgs(argv, parseOptions) {
			if (argv !== void 0 && !Array.isArray(argv)) throw new Error("first parameter to parse must be array or undefined");
			parseOptions = parseOptions || {};
			if (argv === void 0 && parseOptions.from === void 0) {
				if (process.versions?.electron) parseOptions.from = "electron";
				const execArgv = process.execArgv ?? [];
				if (execArgv.includes("-e") || execArgv.includes("--eval") || execArgv.includes("-p") || execArgv.includes("--print")) parseOptions.from = "eval";
			}
			if (argv === void 0) argv = process.argv;
			this.rawArgs = argv.slice();
			let userArgs;
			switch (parseOptions.from) {
				case void 0:
				case "node":
					this._scriptPath = argv[1];
					userArgs = argv.slice(2);
					break;
				case "electron":
					if (process.defaultApp) {
						this._scriptPath = argv[1];
						userArgs = argv.slice(2);
					} else userArgs = argv.slice(1);
					break;
				case "user":
					userArgs = argv.slice(0);
					break;
				case "eval":
					userArgs = argv.slice(1);
					break;
				default: throw new Error(`unexpected parse option { from: '${parseOptions.from}' }`);
			}
			if (!this._name && this._scriptPath) this.nameFromFilename(this._scriptPath);
			this._name = this._name || "program";
			return userArgs;
		}
		/**
		* Parse `argv`, setting options and invoking commands when defined.
		*
		* Use parseAsync instead of parse if any of your action handlers are async.
		*
		* Call with no parameters to parse `process.argv`. Detects Electron and special node options like `node --eval`. Easy mode!
		*
		* Or call with an array of strings to parse, and optionally where the user arguments start by specifying where the arguments are `from`:
		* - `'node'`: default, `argv[0]` is the application and `argv[1]` is the script being run, with user arguments after that
		* - `'electron'`: `argv[0]` is the application and `argv[1]` varies depending on whether the electron application is packaged
		* - `'user'`: just user arguments
		*
		* @example
		* program.parse(); // parse process.argv and auto-detect electron and special node flags
		* program.parse(process.argv); // assume argv[0] is app and argv[1] is script
		* program.parse(my-args, { from: 'user' }); // just user supplied arguments, nothing special about argv[0]
		*
		* @param {string[]} [argv] - optional, defaults to process.argv
		* @param {object} [parseOptions] - optionally specify style of options with from: node/user/electron
		* @param {string} [parseOptions.from] - where the args are from: 'node', 'user', 'electron'
		* @return {Command} `this` command for chaining
		*/
		parse(argv, parseOptions) {
			this._prepareForParse();
			const userArgs = this._prepareUserArgs(argv, parseOptions);
			this._parseCommand([], userArgs);
			return this;
		}
		/**
		* Parse `argv`, setting options and invoking commands when defined.
		*
		* Call with no parameters to parse `process.argv`. Detects Electron and special node options like `node --eval`. Easy mode!
		*
		* Or call with an array of strings to parse, and optionally where the user arguments start by specifying where the arguments are `from`:
		* - `'node'`: default, `argv[0]` is the application and `argv[1]` is the script being run, with user arguments after that
		* - `'electron'`: `argv[0]` is the application and `argv[1]` varies depending on whether the electron application is packaged
		* - `'user'`: just user arguments
		*
		* @example
		* await program.parseAsync(); // parse process.argv and auto-detect electron and special node flags
		* await program.parseAsync(process.argv); // assume argv[0] is app and argv[1] is script
		* await program.parseAsync(my-args, { from: 'user' }); // just user supplied arguments, nothing special about argv[0]
		*
		* @param {string[]} [argv]
		* @param {object} [parseOptions]
		* @param {string} parseOptions.from - where the args are from: 'node', 'user', 'electron'
		* @return {Promise}
		*/
		async parseAsync(argv, parseOptions) {
			this._prepareForParse();
			const userArgs = this._prepareUserArgs(argv, parseOptions);
			await this._parseCommand([], userArgs);
			return this;
		}
		_prepareForParse() {
			if (this._savedState === null) this.saveStateBeforeParse();
			else this.restoreStateBeforeParse();
		}
		/**
		* Called the first time parse is called to save state and allow a restore before subsequent calls to parse.
		* Not usually called directly, but available for subclasses to save their custom state.
		*
		* This is called in a lazy way. Only commands used in parsing chain will have state saved.
		*/
		saveStateBeforeParse() {
			this._savedState = {
				_name: this._name,
				_optionValues: { ...this._optionValues },
				_optionValueSources: { ...this._optionValueSources }
			};
		}
		/**
		* Restore state before parse for calls after the first.
		* Not usually called directly, but available for subclasses to save their custom state.
		*
		* This is called in a lazy way. Only commands used in parsing chain will have state restored.
		*/
		restoreStateBeforeParse() {
			if (this._storeOptionsAsProperties) throw new Error(`Can not call parse again when storeOptionsAsProperties is true.
- either make a new Command for each call to parse, or stop storing options as properties`);
			this._name = this._savedState._name;
			this._scriptPath = null;
			this.rawArgs = [];
			this._optionValues = { ...this._savedState._optionValues };
			this._optionValueSources = { ...this._savedState._optionValueSources };
			this.args = [];
			this.processedArgs = [];
		}
		/**
		* Throw if expected executable is missing. Add lots of help for author.
		*
		* @param {string} executableFile
		* @param {string} executableDir
		* @param {string} subcommandName
		*/
		_checkForMissingExecutable(executableFile, executableDir, subcommandName) {
			if (fs.existsSync(executableFile)) return;
			const executableMissing = `'${executableFile}' does not exist
 - if '${subcommandName}' is not meant to be an executable command, remove description parameter from '.command()' and use '.description()' instead
 - if the default executable name is not suitable, use the executableFile option to supply a custom name or path
 - ${executableDir ? `searched for local subcommand relative to directory '${executableDir}'` : "no directory for search for local subcommand, use .executableDir() to supply a custom directory"}`;
			throw new Error(executableMissing);
		}
		/**
		* Execute a sub-command executable.
		*
		* @private
		*/
		_executeSubCommand(subcommand, args) {
			args = args.slice();
			let launchWithNode = false;
			const sourceExt = [
				".js",
				".ts",
				".tsx",
				".mjs",
				".cjs"
			];
			function findFile(baseDir, baseName) {
				const localBin = path.resolve(baseDir, baseName);
				if (fs.existsSync(localBin)) return localBin;
				if (sourceExt.includes(path.extname(baseName))) return void 0;
				const foundExt = sourceExt.find((ext) => fs.existsSync(`${localBin}${ext}`));
				if (foundExt) return `${localBin}${foundExt}`;
			}
			this._checkForMissingMandatoryOptions();
			this._checkForConflictingOptions();
			let executableFile = subcommand._executableFile || `${this._name}-${subcommand._name}`;
			let executableDir = this._executableDir || "";
			if (this._scriptPath) {
				let resolvedScriptPath;
				try {
					resolvedScriptPath = fs.realpathSync(this._scriptPath);
				} catch {
					resolvedScriptPath = this._scriptPath;
				}
				executableDir = path.resolve(path.dirname(resolvedScriptPath), executableDir);
			}
			if (executableDir) {
				let localFile = findFile(executableDir, executableFile);
				if (!localFile && !subcommand._executableFile && this._scriptPath) {
					const legacyName = path.basename(this._scriptPath, path.extname(this._scriptPath));
					if (legacyName !== this._name) localFile = findFile(executableDir, `${legacyName}-${subcommand._name}`);
				}
				executableFile = localFile || executableFile;
			}
			launchWithNode = sourceExt.includes(path.extname(executableFile));
			let proc;
			if (process.platform !== "win32") {
				if (launchWithNode) {
					args.unshift(executableFile);
					args = incrementNodeInspectorPort(process.execArgv).concat(args);
					proc = childProcess.spawn(process.argv[0], args, { stdio: "inherit" });
				} else proc = childProcess.spawn(executableFile, args, { stdio: "inherit" });
			} else {
				this._checkForMissingExecutable(executableFile, executableDir, subcommand._name);
				args.unshift(executableFile);
				args = incrementNodeInspectorPort(process.execArgv).concat(args);
				proc = childProcess.spawn(process.execPath, args, { stdio: "inherit" });
			}
			if (!proc.killed) [
				"SIGUSR1",
				"SIGUSR2",
				"SIGTERM",
				"SIGINT",
				"SIGHUP"
			].forEach((signal) => {
				process.on(signal, () => {
					if (proc.killed === false && proc.exitCode === null) proc.kill(signal);
				});
			});
			const exitCallback = this._exitCallback;
			proc.on("close", (code) => {
				code = code ?? 1;
				if (!exitCallback) process.exit(code);
				else exitCallback(new CommanderError(code, "commander.executeSubCommandAsync", "(close)"));
			});
			proc.on("error", (err) => {
				if (err.code === "ENOENT") this._checkForMissingExecutable(executableFile, executableDir, subcommand._name);
				else if (err.code === "EACCES") throw new Error(`'${executableFile}' not executable`);
				if (!exitCallback) process.exit(1);
				else {
					const wrappedError = new CommanderError(1, "commander.executeSubCommandAsync", "(error)");
					wrappedError.nestedError = err;
					exitCallback(wrappedError);
				}
			});
			this.runningCommand = proc;
		}
		/**
		* @private
		*/
		_dispatchSubcommand(commandName, operands, unknown) {
			const subCommand = this._findCommand(commandName);
			if (!subCommand) this.help({ error: true });
			subCommand._prepareForParse();
			let promiseChain;
			promiseChain = this._chainOrCallSubCommandHook(promiseChain, subCommand, "preSubcommand");
			promiseChain = this._chainOrCall(promiseChain, () => {
				if (subCommand._executableHandler) this._executeSubCommand(subCommand, operands.concat(unknown));
				else return subCommand._parseCommand(operands, unknown);
			});
			return promiseChain;
		}
		/**
		* Invoke help directly if possible, or dispatch if necessary.
		* e.g. help foo
		*
		* @private
		*/
		_dispatchHelpCommand(subcommandName) {
			if (!subcommandName) this.help();
			const subCommand = this._findCommand(subcommandName);
			if (subCommand && !subCommand._executableHandler) subCommand.help();
			return this._dispatchSubcommand(subcommandName, [], [this._getHelpOption()?.long ?? this._getHelpOption()?.short ?? "--help"]);
		}
		/**
		* Check this.args against expected this.registeredArguments.
		*
		* @private
		*/
		_checkNumberOfArguments() {
			this.registeredArguments.forEach((arg, i) => {
				if (arg.required && this.args[i] == null) this.missingArgument(arg.name());
			});
			if (this.registeredArguments.length > 0 && this.registeredArguments[this.registeredArguments.length - 1].variadic) return;
			if (this.args.length > this.registeredArguments.length) this._excessArguments(this.args);
		}
		/**
		* Process this.args using this.registeredArguments and save as this.processedArgs!
		*
		* @private
		*/
		_processArguments() {
			const myParseArg = (argument, value, previous) => {
				let parsedValue = value;
				if (value !== null && argument.parseArg) {
					const invalidValueMessage = `error: command-argument value '${value}' is invalid for argument '${argument.name()}'.`;
					parsedValue = this._callParseArg(argument, value, previous, invalidValueMessage);
				}
				return parsedValue;
			};
			this._checkNumberOfArguments();
			const processedArgs = [];
			this.registeredArguments.forEach((declaredArg, index) => {
				let value = declaredArg.defaultValue;
				if (declaredArg.variadic) {
					if (index < this.args.length) {
						value = this.args.slice(index);
						if (declaredArg.parseArg) value = value.reduce((processed, v) => {
							return myParseArg(declaredArg, v, processed);
						}, declaredArg.defaultValue);
					} else if (value === void 0) value = [];
				} else if (index < this.args.length) {
					value = this.args[index];
					if (declaredArg.parseArg) value = myParseArg(declaredArg, value, declaredArg.defaultValue);
				}
				processedArgs[index] = value;
			});
			this.processedArgs = processedArgs;
		}
		/**
		* Once we have a promise we chain, but call synchronously until then.
		*
		* @param {(Promise|undefined)} promise
		* @param {Function} fn
		* @return {(Promise|undefined)}
		* @private
		*/
		_chainOrCall(promise, fn) {
			if (promise?.then && typeof promise.then === "function") return promise.then(() => fn());
			return fn();
		}
		/**
		*
		* @param {(Promise|undefined)} promise
		* @param {string} event
		* @return {(Promise|undefined)}
		* @private
		*/
		_chainOrCallHooks(promise, event) {
			let result = promise;
			const hooks = [];
			this._getCommandAndAncestors().reverse().filter((cmd) => cmd._lifeCycleHooks[event] !== void 0).forEach((hookedCommand) => {
				hookedCommand._lifeCycleHooks[event].forEach((callback) => {
					hooks.push({
						hookedCommand,
						callback
					});
				});
			});
			if (event === "postAction") hooks.reverse();
			hooks.forEach((hookDetail) => {
				result = this._chainOrCall(result, () => {
					return hookDetail.callback(hookDetail.hookedCommand, this);
				});
			});
			return result;
		}
		/**
		*
		* @param {(Promise|undefined)} promise
		* @param {Command} subCommand
		* @param {string} event
		* @return {(Promise|undefined)}
		* @private
		*/
		_chainOrCallSubCommandHook(promise, subCommand, event) {
			let result = promise;
			if (this._lifeCycleHooks[event] !== void 0) this._lifeCycleHooks[event].forEach((hook) => {
				result = this._chainOrCall(result, () => {
					return hook(this, subCommand);
				});
			});
			return result;
		}
		/**
		* Process arguments in context of this command.
		* Returns action result, in case it is a promise.
		*
		* @private
		*/
		_parseCommand(operands, unknown) {
			const parsed = this.parseOptions(unknown);
			this._parseOptionsEnv();
			this._parseOptionsImplied();
			operands = operands.concat(parsed.operands);
			unknown = parsed.unknown;
			this.args = operands.concat(unknown);
			if (operands && this._findCommand(operands[0])) return this._dispatchSubcommand(operands[0], operands.slice(1), unknown);
			if (this._getHelpCommand() && operands[0] === this._getHelpCommand().name()) return this._dispatchHelpCommand(operands[1]);
			if (this._defaultCommandName) {
				this._outputHelpIfRequested(unknown);
				return this._dispatchSubcommand(this._defaultCommandName, operands, unknown);
			}
			if (this.commands.length && this.args.length === 0 && !this._actionHandler && !this._defaultCommandName) this.help({ error: true });
			this._outputHelpIfRequested(parsed.unknown);
			this._checkForMissingMandatoryOptions();
			this._checkForConflictingOptions();
			const checkForUnknownOptions = () => {
				if (parsed.unknown.length > 0) this.unknownOption(parsed.unknown[0]);
			};
			const commandEvent = `command:${this.name()}`;
			if (this._actionHandler) {
				checkForUnknownOptions();
				this._processArguments();
				let promiseChain;
				promiseChain = this._chainOrCallHooks(promiseChain, "preAction");
				promiseChain = this._chainOrCall(promiseChain, () => this._actionHandler(this.processedArgs));
				if (this.parent) promiseChain = this._chainOrCall(promiseChain, () => {
					this.parent.emit(commandEvent, operands, unknown);
				});
				promiseChain = this._chainOrCallHooks(promiseChain, "postAction");
				return promiseChain;
			}
			if (this.parent?.listenerCount(commandEvent)) {
				checkForUnknownOptions();
				this._processArguments();
				this.parent.emit(commandEvent, operands, unknown);
			} else if (operands.length) {
				if (this._findCommand("*")) return this._dispatchSubcommand("*", operands, unknown);
				if (this.listenerCount("command:*")) this.emit("command:*", operands, unknown);
				else if (this.commands.length) this.unknownCommand();
				else {
					checkForUnknownOptions();
					this._processArguments();
				}
			} else if (this.commands.length) {
				checkForUnknownOptions();
				this.help({ error: true });
			} else {
				checkForUnknownOptions();
				this._processArguments();
			}
		}
		/**
		* Find matching command.
		*
		* @private
		* @return {Command | undefined}
		*/
		_findCommand(name) {
			if (!name) return void 0;
			return this.commands.find((cmd) => cmd._name === name || cmd._aliases.includes(name));
		}
		/**
		* Return an option matching `arg` if any.
		*
		* @param {string} arg
		* @return {Option}
		* @package
		*/
		_findOption(arg) {
			return this.options.find((option) => option.is(arg));
		}
		/**
		* Display an error message if a mandatory option does not have a value.
		* Called after checking for help flags in leaf subcommand.
		*
		* @private
		*/
		_checkForMissingMandatoryOptions() {
			this._getCommandAndAncestors().forEach((cmd) => {
				cmd.options.forEach((anOption) => {
					if (anOption.mandatory && cmd.getOptionValue(anOption.attributeName()) === void 0) cmd.missingMandatoryOptionValue(anOption);
				});
			});
		}
		/**
		* Display an error message if conflicting options are used together in this.
		*
		* @private
		*/
		_checkForConflictingLocalOptions() {
			const definedNonDefaultOptions = this.options.filter((option) => {
				const optionKey = option.attributeName();
				if (this.getOptionValue(optionKey) === void 0) return false;
				return this.getOptionValueSource(optionKey) !== "default";
			});
			definedNonDefaultOptions.filter((option) => option.conflictsWith.length > 0).forEach((option) => {
				const conflictingAndDefined = definedNonDefaultOptions.find((defined) => option.conflictsWith.includes(defined.attributeName()));
				if (conflictingAndDefined) this._conflictingOption(option, conflictingAndDefined);
			});
		}
		/**
		* Display an error message if conflicting options are used together.
		* Called after checking for help flags in leaf subcommand.
		*
		* @private
		*/
		_checkForConflictingOptions() {
			this._getCommandAndAncestors().forEach((cmd) => {
				cmd._checkForConflictingLocalOptions();
			});
		}
		/**
		* Parse options from `argv` removing known options,
		* and return argv split into operands and unknown arguments.
		*
		* Side effects: modifies command by storing options. Does not reset state if called again.
		*
		* Examples:
		*
		*     argv => operands, unknown
		*     --known kkk op => [op], []
		*     op --known kkk => [op], []
		*     sub --unknown uuu op => [sub], [--unknown uuu op]
		*     sub -- --unknown uuu op => [sub --unknown uuu op], []
		*
		* @param {string[]} args
		* @return {{operands: string[], unknown: string[]}}
		*/
		parseOptions(args) {
			const operands = [];
			const unknown = [];
			let dest = operands;
			function maybeOption(arg) {
				return arg.length > 1 && arg[0] === "-";
			}
			const negativeNumberArg = (arg) => {
				if (!/^-(\d+|\d*\.\d+)(e[+-]?\d+)?$/.test(arg)) return false;
				return !this._getCommandAndAncestors().some((cmd) => cmd.options.map((opt) => opt.short).some((short) => /^-\d$/.test(short)));
			};
			let activeVariadicOption = null;
			let activeGroup = null;
			let i = 0;
			while (i < args.length || activeGroup) {
				const arg = activeGroup ?? args[i++];
				activeGroup = null;
				if (arg === "--") {
					if (dest === unknown) dest.push(arg);
					dest.push(...args.slice(i));
					break;
				}
				if (activeVariadicOption && (!maybeOption(arg) || negativeNumberArg(arg))) {
					this.emit(`option:${activeVariadicOption.name()}`, arg);
					continue;
				}
				activeVariadicOption = null;
				if (maybeOption(arg)) {
					const option = this._findOption(arg);
					if (option) {
						if (option.required) {
							const value = args[i++];
							if (value === void 0) this.optionMissingArgument(option);
							this.emit(`option:${option.name()}`, value);
						} else if (option.optional) {
							let value = null;
							if (i < args.length && (!maybeOption(args[i]) || negativeNumberArg(args[i]))) value = args[i++];
							this.emit(`option:${option.name()}`, value);
						} else this.emit(`option:${option.name()}`);
						activeVariadicOption = option.variadic ? option : null;
						continue;
					}
				}
				if (arg.length > 2 && arg[0] === "-" && arg[1] !== "-") {
					const option = this._findOption(`-${arg[1]}`);
					if (option) {
						if (option.required || option.optional && this._combineFlagAndOptionalValue) this.emit(`option:${option.name()}`, arg.slice(2));
						else {
							this.emit(`option:${option.name()}`);
							activeGroup = `-${arg.slice(2)}`;
						}
						continue;
					}
				}
				if (/^--[^=]+=/.test(arg)) {
					const index = arg.indexOf("=");
					const option = this._findOption(arg.slice(0, index));
					if (option && (option.required || option.optional)) {
						this.emit(`option:${option.name()}`, arg.slice(index + 1));
						continue;
					}
				}
				if (dest === operands && maybeOption(arg) && !(this.commands.length === 0 && negativeNumberArg(arg))) dest = unknown;
				if ((this._enablePositionalOptions || this._passThroughOptions) && operands.length === 0 && unknown.length === 0) {
					if (this._findCommand(arg)) {
						operands.push(arg);
						unknown.push(...args.slice(i));
						break;
					} else if (this._getHelpCommand() && arg === this._getHelpCommand().name()) {
						operands.push(arg, ...args.slice(i));
						break;
					} else if (this._defaultCommandName) {
						unknown.push(arg, ...args.slice(i));
						break;
					}
				}
				if (this._passThroughOptions) {
					dest.push(arg, ...args.slice(i));
					break;
				}
				dest.push(arg);
			}
			return {
				operands,
				unknown
			};
		}
		/**
		* Return an object containing local option values as key-value pairs.
		*
		* @return {object}
		*/
		opts() {
			if (this._storeOptionsAsProperties) {
				const result = {};
				const len = this.options.length;
				for (let i = 0; i < len; i++) {
					const key = this.options[i].attributeName();
					result[key] = key === this._versionOptionName ? this._version : this[key];
				}
				return result;
			}
			return this._optionValues;
		}
		/**
		* Return an object containing merged local and global option values as key-value pairs.
		*
		* @return {object}
		*/
		optsWithGlobals() {
			return this._getCommandAndAncestors().reduce((combinedOptions, cmd) => Object.assign(combinedOptions, cmd.opts()), {});
		}
		/**
		* Display error message and exit (or call exitOverride).
		*
		* @param {string} message
		* @param {object} [errorOptions]
		* @param {string} [errorOptions.code] - an id string representing the error
		* @param {number} [errorOptions.exitCode] - used with process.exit
		*/
		error(message, errorOptions) {
			this._outputConfiguration.outputError(`${message}\n`, this._outputConfiguration.writeErr);
			if (typeof this._showHelpAfterError === "string") this._outputConfiguration.writeErr(`${this._showHelpAfterError}\n`);
			else if (this._showHelpAfterError) {
				this._outputConfiguration.writeErr("\n");
				this.outputHelp({ error: true });
			}
			const config = errorOptions || {};
			const exitCode = config.exitCode || 1;
			const code = config.code || "commander.error";
			this._exit(exitCode, code, message);
		}
		/**
		* Apply any option related environment variables, if option does
		* not have a value from cli or client code.
		*
		* @private
		*/
		_parseOptionsEnv() {
			this.options.forEach((option) => {
				if (option.envVar && option.envVar in process.env) {
					const optionKey = option.attributeName();
					if (this.getOptionValue(optionKey) === void 0 || [
						"default",
						"config",
						"env"
					].includes(this.getOptionValueSource(optionKey))) {
						if (option.required || option.optional) this.emit(`optionEnv:${option.name()}`, process.env[option.envVar]);
						else this.emit(`optionEnv:${option.name()}`);
					}
				}
			});
		}
		/**
		* Apply any implied option values, if option is undefined or default value.
		*
		* @private
		*/
		_parseOptionsImplied() {
			const dualHelper = new DualOptions(this.options);
			const hasCustomOptionValue = (optionKey) => {
				return this.getOptionValue(optionKey) !== void 0 && !["default", "implied"].includes(this.getOptionValueSource(optionKey));
			};
			this.options.filter((option) => option.implied !== void 0 && hasCustomOptionValue(option.attributeName()) && dualHelper.valueFromOption(this.getOptionValue(option.attributeName()), option)).forEach((option) => {
				Object.keys(option.implied).filter((impliedKey) => !hasCustomOptionValue(impliedKey)).forEach((impliedKey) => {
					this.setOptionValueWithSource(impliedKey, option.implied[impliedKey], "implied");
				});
			});
		}
		/**
		* Argument `name` is missing.
		*
		* @param {string} name
		* @private
		*/
		missingArgument(name) {
			const message = `error: missing required argument '${name}'`;
			this.error(message, { code: "commander.missingArgument" });
		}
		/**
		* `Option` is missing an argument.
		*
		* @param {Option} option
		* @private
		*/
		optionMissingArgument(option) {
			const message = `error: option '${option.flags}' argument missing`;
			this.error(message, { code: "commander.optionMissingArgument" });
		}
		/**
		* `Option` does not have a value, and is a mandatory option.
		*
		* @param {Option} option
		* @private
		*/
		missingMandatoryOptionValue(option) {
			const message = `error: required option '${option.flags}' not specified`;
			this.error(message, { code: "commander.missingMandatoryOptionValue" });
		}
		/**
		* `Option` conflicts with another option.
		*
		* @param {Option} option
		* @param {Option} conflictingOption
		* @private
		*/
		_conflictingOption(option, conflictingOption) {
			const findBestOptionFromValue = (option) => {
				const optionKey = option.attributeName();
				const optionValue = this.getOptionValue(optionKey);
				const negativeOption = this.options.find((target) => target.negate && optionKey === target.attributeName());
				const positiveOption = this.options.find((target) => !target.negate && optionKey === target.attributeName());
				if (negativeOption && (negativeOption.presetArg === void 0 && optionValue === false || negativeOption.presetArg !== void 0 && optionValue === negativeOption.presetArg)) return negativeOption;
				return positiveOption || option;
			};
			const getErrorMessage = (option) => {
				const bestOption = findBestOptionFromValue(option);
				const optionKey = bestOption.attributeName();
				if (this.getOptionValueSource(optionKey) === "env") return `environment variable '${bestOption.envVar}'`;
				return `option '${bestOption.flags}'`;
			};
			const message = `error: ${getErrorMessage(option)} cannot be used with ${getErrorMessage(conflictingOption)}`;
			this.error(message, { code: "commander.conflictingOption" });
		}
		/**
		* Unknown option `flag`.
		*
		* @param {string} flag
		* @private
		*/
		unknownOption(flag) {
			if (this._allowUnknownOption) return;
			let suggestion = "";
			if (flag.startsWith("--") && this._showSuggestionAfterError) {
				let candidateFlags = [];
				let command = this;
				do {
					const moreFlags = command.createHelp().visibleOptions(command).filter((option) => option.long).map((option) => option.long);
					candidateFlags = candidateFlags.concat(moreFlags);
					command = command.parent;
				} while (command && !command._enablePositionalOptions);
				suggestion = suggestSimilar(flag, candidateFlags);
			}
			const message = `error: unknown option '${flag}'${suggestion}`;
			this.error(message, { code: "commander.unknownOption" });
		}
		/**
		* Excess arguments, more than expected.
		*
		* @param {string[]} receivedArgs
		* @private
		*/
		_excessArguments(receivedArgs) {
			if (this._allowExcessArguments) return;
			const expected = this.registeredArguments.length;
			const s = expected === 1 ? "" : "s";
			const message = `error: too many arguments${this.parent ? ` for '${this.name()}'` : ""}. Expected ${expected} argument${s} but got ${receivedArgs.length}.`;
			this.error(message, { code: "commander.excessArguments" });
		}
		/**
		* Unknown command.
		*
		* @private
		*/
		unknownCommand() {
			const unknownName = this.args[0];
			let suggestion = "";
			if (this._showSuggestionAfterError) {
				const candidateNames = [];
				this.createHelp().visibleCommands(this).forEach((command) => {
					candidateNames.push(command.name());
					if (command.alias()) candidateNames.push(command.alias());
				});
				suggestion = suggestSimilar(unknownName, candidateNames);
			}
			const message = `error: unknown command '${unknownName}'${suggestion}`;
			this.error(message, { code: "commander.unknownCommand" });
		}
		/**
		* Get or set the program version.
		*
		* This method auto-registers the "-V, --version" option which will print the version number.
		*
		* You can optionally supply the flags and description to override the defaults.
		*
		* @param {string} [str]
		* @param {string} [flags]
		* @param {string} [description]
		* @return {(this | string | undefined)} `this` command for chaining, or version string if no arguments
		*/
		version(str, flags, description) {
			if (str === void 0) return this._version;
			this._version = str;
			flags = flags || "-V, --version";
			description = description || "output the version number";
			const versionOption = this.createOption(flags, description);
			this._versionOptionName = versionOption.attributeName();
			this._registerOption(versionOption);
			this.on("option:" + versionOption.name(), () => {
				this._outputConfiguration.writeOut(`${str}\n`);
				this._exit(0, "commander.version", str);
			});
			return this;
		}
		/**
		* Set the description.
		*
		* @param {string} [str]
		* @param {object} [argsDescription]
		* @return {(string|Command)}
		*/
		description(str, argsDescription) {
			if (str === void 0 && argsDescription === void 0) return this._description;
			this._description = str;
			if (argsDescription) this._argsDescription = argsDescription;
			return this;
		}
		/**
		* Set the summary. Used when listed as subcommand of parent.
		*
		* @param {string} [str]
		* @return {(string|Command)}
		*/
		summary(str) {
			if (str === void 0) return this._summary;
			this._summary = str;
			return this;
		}
		/**
		* Set an alias for the command.
		*
		* You may call more than once to add multiple aliases. Only the first alias is shown in the auto-generated help.
		*
		* @param {string} [alias]
		* @return {(string|Command)}
		*/
		alias(alias) {
			if (alias === void 0) return this._aliases[0];
			/** @type {Command} */
			let command = this;
			if (this.commands.length !== 0 && this.commands[this.commands.length - 1]._executableHandler) command = this.commands[this.commands.length - 1];
			if (alias === command._name) throw new Error("Command alias can't be the same as its name");
			const matchingCommand = this.parent?._findCommand(alias);
			if (matchingCommand) {
				const existingCmd = [matchingCommand.name()].concat(matchingCommand.aliases()).join("|");
				throw new Error(`cannot add alias '${alias}' to command '${this.name()}' as already have command '${existingCmd}'`);
			}
			command._aliases.push(alias);
			return this;
		}
		/**
		* Set aliases for the command.
		*
		* Only the first alias is shown in the auto-generated help.
		*
		* @param {string[]} [aliases]
		* @return {(string[]|Command)}
		*/
		aliases(aliases) {
			if (aliases === void 0) return this._aliases;
			aliases.forEach((alias) => this.alias(alias));
			return this;
		}
		/**
		* Set / get the command usage `str`.
		*
		* @param {string} [str]
		* @return {(string|Command)}
		*/
		usage(str) {
			if (str === void 0) {
				if (this._usage) return this._usage;
				const args = this.registeredArguments.map((arg) => {
					return humanReadableArgName(arg);
				});
				return [].concat(this.options.length || this._helpOption !== null ? "[options]" : [], this.commands.length ? "[command]" : [], this.registeredArguments.length ? args : []).join(" ");
			}
			this._usage = str;
			return this;
		}
		/**
		* Get or set the name of the command.
		*
		* @param {string} [str]
		* @return {(string|Command)}
		*/
		name(str) {
			if (str === void 0) return this._name;
			this._name = str;
			return this;
		}
		/**
		* Set/get the help group heading for this subcommand in parent command's help.
		*
		* @param {string} [heading]
		* @return {Command | string}
		*/
		helpGroup(heading) {
			if (heading === void 0) return this._helpGroupHeading ?? "";
			this._helpGroupHeading = heading;
			return this;
		}
		/**
		* Set/get the default help group heading for subcommands added to this command.
		* (This does not override a group set directly on the subcommand using .helpGroup().)
		*
		* @example
		* program.commandsGroup('Development Commands:);
		* program.command('watch')...
		* program.command('lint')...
		* ...
		*
		* @param {string} [heading]
		* @returns {Command | string}
		*/
		commandsGroup(heading) {
			if (heading === void 0) return this._defaultCommandGroup ?? "";
			this._defaultCommandGroup = heading;
			return this;
		}
		/**
		* Set/get the default help group heading for options added to this command.
		* (This does not override a group set directly on the option using .helpGroup().)
		*
		* @example
		* program
		*   .optionsGroup('Development Options:')
		*   .option('-d, --debug', 'output extra debugging')
		*   .option('-p, --profile', 'output profiling information')
		*
		* @param {string} [heading]
		* @returns {Command | string}
		*/
		optionsGroup(heading) {
			if (heading === void 0) return this._defaultOptionGroup ?? "";
			this._defaultOptionGroup = heading;
			return this;
		}
		/**
		* @param {Option} option
		* @private
		*/
		_initOptionGroup(option) {
			if (this._defaultOptionGroup && !option.helpGroupHeading) option.helpGroup(this._defaultOptionGroup);
		}
		/**
		* @param {Command} cmd
		* @private
		*/
		_initCommandGroup(cmd) {
			if (this._defaultCommandGroup && !cmd.helpGroup()) cmd.helpGroup(this._defaultCommandGroup);
		}
		/**
		* Set the name of the command from script filename, such as process.argv[1],
		* or require.main.filename, or __filename.
		*
		* (Used internally and public although not documented in README.)
		*
		* @example
		* program.nameFromFilename(require.main.filename);
		*
		* @param {string} filename
		* @return {Command}
		*/
		nameFromFilename(filename) {
			this._name = path.basename(filename, path.extname(filename));
			return this;
		}
		/**
		* Get or set the directory for searching for executable subcommands of this command.
		*
		* @example
		* program.executableDir(__dirname);
		* // or
		* program.executableDir('subcommands');
		*
		* @param {string} [path]
		* @return {(string|null|Command)}
		*/
		executableDir(path) {
			if (path === void 0) return this._executableDir;
			this._executableDir = path;
			return this;
		}
		/**
		* Return program help documentation.
		*
		* @param {{ error: boolean }} [contextOptions] - pass {error:true} to wrap for stderr instead of stdout
		* @return {string}
		*/
		helpInformation(contextOptions) {
			const helper = this.createHelp();
			const context = this._getOutputContext(contextOptions);
			helper.prepareContext({
				error: context.error,
				helpWidth: context.helpWidth,
				outputHasColors: context.hasColors
			});
			const text = helper.formatHelp(this, helper);
			if (context.hasColors) return text;
			return this._outputConfiguration.stripColor(text);
		}
		/**
		* @typedef HelpContext
		* @type {object}
		* @property {boolean} error
		* @property {number} helpWidth
		* @property {boolean} hasColors
		* @property {function} write - includes stripColor if needed
		*
		* @returns {HelpContext}
		* @private
		*/
		_getOutputContext(contextOptions) {
			contextOptions = contextOptions || {};
			const error = !!contextOptions.error;
			let baseWrite;
			let hasColors;
			let helpWidth;
			if (error) {
				baseWrite = (str) => this._outputConfiguration.writeErr(str);
				hasColors = this._outputConfiguration.getErrHasColors();
				helpWidth = this._outputConfiguration.getErrHelpWidth();
			} else {
				baseWrite = (str) => this._outputConfiguration.writeOut(str);
				hasColors = this._outputConfiguration.getOutHasColors();
				helpWidth = this._outputConfiguration.getOutHelpWidth();
			}
			const write = (str) => {
				if (!hasColors) str = this._outputConfiguration.stripColor(str);
				return baseWrite(str);
			};
			return {
				error,
				write,
				hasColors,
				helpWidth
			};
		}
		/**
		* Output help information for this command.
		*
		* Outputs built-in help, and custom text added using `.addHelpText()`.
		*
		* @param {{ error: boolean } | Function} [contextOptions] - pass {error:true} to write to stderr instead of stdout
		*/
		outputHelp(contextOptions) {
			let deprecatedCallback;
			if (typeof contextOptions === "function") {
				deprecatedCallback = contextOptions;
				contextOptions = void 0;
			}
			const outputContext = this._getOutputContext(contextOptions);
			/** @type {HelpTextEventContext} */
			const eventContext = {
				error: outputContext.error,
				write: outputContext.write,
				command: this
			};
			this._getCommandAndAncestors().reverse().forEach((command) => command.emit("beforeAllHelp", eventContext));
			this.emit("beforeHelp", eventContext);
			let helpInformation = this.helpInformation({ error: outputContext.error });
			if (deprecatedCallback) {
				helpInformation = deprecatedCallback(helpInformation);
				if (typeof helpInformation !== "string" && !Buffer.isBuffer(helpInformation)) throw new Error("outputHelp callback must return a string or a Buffer");
			}
			outputContext.write(helpInformation);
			if (this._getHelpOption()?.long) this.emit(this._getHelpOption().long);
			this.emit("afterHelp", eventContext);
			this._getCommandAndAncestors().forEach((command) => command.emit("afterAllHelp", eventContext));
		}
		/**
		* You can pass in flags and a description to customise the built-in help option.
		* Pass in false to disable the built-in help option.
		*
		* @example
		* program.helpOption('-?, --help' 'show help'); // customise
		* program.helpOption(false); // disable
		*
		* @param {(string | boolean)} flags
		* @param {string} [description]
		* @return {Command} `this` command for chaining
		*/
		helpOption(flags, description) {
			if (typeof flags === "boolean") {
				if (flags) {
					if (this._helpOption === null) this._helpOption = void 0;
					if (this._defaultOptionGroup) this._initOptionGroup(this._getHelpOption());
				} else this._helpOption = null;
				return this;
			}
			this._helpOption = this.createOption(flags ?? "-h, --help", description ?? "display help for command");
			if (flags || description) this._initOptionGroup(this._helpOption);
			return this;
		}
		/**
		* Lazy create help option.
		* Returns null if has been disabled with .helpOption(false).
		*
		* @returns {(Option | null)} the help option
		* @package
		*/
		_getHelpOption() {
			if (this._helpOption === void 0) this.helpOption(void 0, void 0);
			return this._helpOption;
		}
		/**
		* Supply your own option to use for the built-in help option.
		* This is an alternative to using helpOption() to customise the flags and description etc.
		*
		* @param {Option} option
		* @return {Command} `this` command for chaining
		*/
		addHelpOption(option) {
			this._helpOption = option;
			this._initOptionGroup(option);
			return this;
		}
		/**
		* Output help information and exit.
		*
		* Outputs built-in help, and custom text added using `.addHelpText()`.
		*
		* @param {{ error: boolean }} [contextOptions] - pass {error:true} to write to stderr instead of stdout
		*/
		help(contextOptions) {
			this.outputHelp(contextOptions);
			let exitCode = Number(process.exitCode ?? 0);
			if (exitCode === 0 && contextOptions && typeof contextOptions !== "function" && contextOptions.error) exitCode = 1;
			this._exit(exitCode, "commander.help", "(outputHelp)");
		}
		/**
		* // Do a little typing to coordinate emit and listener for the help text events.
		* @typedef HelpTextEventContext
		* @type {object}
		* @property {boolean} error
		* @property {Command} command
		* @property {function} write
		*/
		/**
		* Add additional text to be displayed with the built-in help.
		*
		* Position is 'before' or 'after' to affect just this command,
		* and 'beforeAll' or 'afterAll' to affect this command and all its subcommands.
		*
		* @param {string} position - before or after built-in help
		* @param {(string | Function)} text - string to add, or a function returning a string
		* @return {Command} `this` command for chaining
		*/
		addHelpText(position, text) {
			const allowedValues = [
				"beforeAll",
				"before",
				"after",
				"afterAll"
			];
			if (!allowedValues.includes(position)) throw new Error(`Unexpected value for position to addHelpText.
Expecting one of '${allowedValues.join("', '")}'`);
			const helpEvent = `${position}Help`;
			this.on(helpEvent, (context) => {
				let helpStr;
				if (typeof text === "function") helpStr = text({
					error: context.error,
					command: context.command
				});
				else helpStr = text;
				if (helpStr) context.write(`${helpStr}\n`);
			});
			return this;
		}
		/**
		* Output help information if help flags specified
		*
		* @param {Array} args - array of options to search for help flags
		* @private
		*/
		_outputHelpIfRequested(args) {
			const helpOption = this._getHelpOption();
			if (helpOption && args.find((arg) => helpOption.is(arg))) {
				this.outputHelp();
				this._exit(0, "commander.helpDisplayed", "(outputHelp)");
			}
		}
	};
	/**
	* Scan arguments and increment port number for inspect calls (to avoid conflicts when spawning new command).
	*
	* @param {string[]} args - array of arguments from node.execArgv
	* @returns {string[]}
	* @private
	*/
	function incrementNodeInspectorPort(args) {
		return args.map((arg) => {
			if (!arg.startsWith("--inspect")) return arg;
			let debugOption;
			let debugHost = "127.0.0.1";
			let debugPort = "9229";
			let match;
			if ((match = arg.match(/^(--inspect(-brk)?)$/)) !== null) debugOption = match[1];
			else if ((match = arg.match(/^(--inspect(-brk|-port)?)=([^:]+)$/)) !== null) {
				debugOption = match[1];
				if (/^\d+$/.test(match[3])) debugPort = match[3];
				else debugHost = match[3];
			} else if ((match = arg.match(/^(--inspect(-brk|-port)?)=([^:]+):(\d+)$/)) !== null) {
				debugOption = match[1];
				debugHost = match[3];
				debugPort = match[4];
			}
			if (debugOption && debugPort !== "0") return `${debugOption}=${debugHost}:${parseInt(debugPort) + 1}`;
			return arg;
		});
	}
	/**
	* @returns {boolean | undefined}
	* @package
	*/
	function useColor() {
		if (process.env.NO_COLOR || process.env.FORCE_COLOR === "0" || process.env.FORCE_COLOR === "false") return false;
		if (process.env.FORCE_COLOR || process.env.CLICOLOR_FORCE !== void 0) return true;
	}
	exports.Command = Command;
	exports.useColor = useColor;
}));
const { program, createCommand, createArgument, createOption, CommanderError, InvalidArgumentError, InvalidOptionArgumentError, Command, Argument, Option, Help } = (/* @__PURE__ */ __toESM((/* @__PURE__ */ __commonJSMin(((exports) => {
	const { Argument } = require_argument();
	const { Command } = require_command();
	const { CommanderError, InvalidArgumentError } = require_error();
	const { Help } = require_help();
	const { Option } = require_option();
	exports.program = new Command();
	exports.createCommand = (name) => new Command(name);
	exports.createOption = (flags, description) => new Option(flags, description);
	exports.createArgument = (name, description) => new Argument(name, description);
	/**
	* Expose classes
	*/
	exports.Command = Command;
	exports.Option = Option;
	exports.Argument = Argument;
	exports.Help = Help;
	exports.CommanderError = CommanderError;
	exports.InvalidArgumentError = InvalidArgumentError;
	exports.InvalidOptionArgumentError = InvalidArgumentError;
})))(), 1)).default;
// src/math/autoregression.ts
/**
* Fits one autoregression x[t] = Σ w[k]·x[t-k-1] + e to several columns at once, by Yule–Walker:
* autocovariances over all pairs of valid samples, each column scaled to unit variance, solved by the
* Levinson–Durbin recursion (Durbin 1960). NaN samples are passed over.
*
* @returns the weights w, `order` of them; all 0 when the columns hold no variation.
*/
function autoregression(columns, order) {
	const covariance = new Float64Array(order + 1);
	for (const column of columns) {
		const own = autocovariance(column, order);
		if (own[0] > 0) for (let k = 0; k <= order; k++) covariance[k] += own[k] / own[0];
	}
	return levinson(covariance);
}
/** Mean product of deviations at lags 0 … `lags`, over the pairs where both samples are valid. */
function autocovariance(column, lags) {
	let sum = 0;
	let count = 0;
	for (const value of column) {
		if (Number.isNaN(value)) continue;
		sum += value;
		count++;
	}
	const mean = count === 0 ? 0 : sum / count;
	const covariance = new Float64Array(lags + 1);
	if (count === 0) return covariance;
	const centred = column.map((value) => Number.isNaN(value) ? 0 : value - mean);
	for (let lag = 0; lag <= lags; lag++) {
		let products = 0;
		for (let t = lag; t < centred.length; t++) products += centred[t] * centred[t - lag];
		covariance[lag] = products / count;
	}
	return covariance;
}
function levinson(covariance) {
	const order = covariance.length - 1;
	const weights = new Float64Array(order);
	let error = covariance[0];
	for (let m = 0; m < order && error > 0; m++) {
		let reflection = covariance[m + 1];
		for (let k = 0; k < m; k++) reflection -= weights[k] * covariance[m - k];
		reflection /= error;
		const before = weights.slice(0, m);
		for (let k = 0; k < m; k++) weights[k] = before[k] - reflection * before[m - 1 - k];
		weights[m] = reflection;
		error *= 1 - reflection * reflection;
	}
	return weights;
}
// src/math/whiten.ts
/** Length (s) of the blocks whose own spread scales the residuals: about one surge. */
const scaleBlock = 60;
/** Residuals beyond this many local spreads are cut: one spike must not decide a correlation. */
const cut$1 = 4;
/** Enough to take out pedalling rhythm and a few seconds of averaging. */
const order$1 = 4;
/**
* Turns channels into residuals that no longer predict themselves: the prediction error of one
* autoregression fitted to all of them together (one filter, so that lags between them survive),
* divided by its own spread in blocks of a minute and cut at four. A residual whose inputs are missing
* is 0 and so carries no weight.
*/
function whiten(columns) {
	const weights = autoregression(columns, order$1);
	return columns.map((column) => evenOut(residuals(column, weights)));
}
function residuals(column, weights) {
	const out = new Float64Array(column.length);
	for (let t = weights.length; t < column.length; t++) {
		let error = column[t];
		for (let k = 0; k < weights.length; k++) error -= weights[k] * column[t - k - 1];
		out[t] = Number.isNaN(error) ? 0 : error;
	}
	return out;
}
function evenOut(residual) {
	const overall = rootMeanSquare(residual, 0, residual.length);
	if (overall === 0) return residual;
	for (let from = 0; from < residual.length; from += scaleBlock) {
		const to = Math.min(from + scaleBlock, residual.length);
		const scale = Math.max(rootMeanSquare(residual, from, to), overall / 10);
		for (let t = from; t < to; t++) residual[t] = Math.max(-4, Math.min(cut$1, residual[t] / scale));
	}
	return residual;
}
/** Over the residuals that are not 0. */
function rootMeanSquare(values, from, to) {
	let sum = 0;
	let count = 0;
	for (let t = from; t < to; t++) {
		const value = values[t];
		if (value === 0) continue;
		sum += value * value;
		count++;
	}
	return count === 0 ? 0 : Math.sqrt(sum / count);
}
// src/align/settings.ts
/** The numbers of aligning, each with its reason. */
const settings$3 = {
	/** Both must have recorded at least this long together (s) for a lag to be considered. */
	leastOverlapSeconds: 240,
	/** …and at least this share of the shorter recording. */
	leastOverlapShare: .5,
	/** Lags closer than this (s) to the best one are the same answer: link latency and smoothing. */
	sameAnswerSeconds: 3,
	/** Log-likelihood by which the best lag must beat every other answer: odds of about 1000 to 1. */
	margin: 7,
	/** The best lag's log-likelihood must exceed the best of a time-reversed second by this factor. */
	surrogateFactor: 1.5,
	/** Header times this close (s) to a lag may choose it among equals. */
	clockSeconds: 12,
	/** Offsets near a multiple of this (s) look like a time-zone slip. */
	zoneSeconds: 900,
	zoneSlackSeconds: 120,
	/** Window (s) in which a clock of its own can be told: about half a minute of detail. */
	segmentWindow: 30,
	/**
	* Log-likelihood that a jump of the clock costs, and a creep by a second: dear enough that a lag between
	* two seconds does not flicker from one to the other.
	*/
	jumpCost: 12,
	creepCost: 15,
	/** How many other answers are tried as offsets of single stretches. */
	segmentCandidates: 12,
	/** Windows (s) in which the lag is found to a fraction of a second, and how many make a drift. */
	delayWindow: 600,
	leastDelayWindow: 120,
	driftWindows: 4,
	/** Lags (s) searched for each channel around the chosen offset: heart rate is buffered longest. */
	channelLag: {
		power: 5,
		cadence: 5,
		heartRate: 20
	},
	/** Trend (s) taken out of a channel before its lag is sought. */
	channelTrend: 120,
	/** Share of a trace's second-to-second detail that one sensor on two recorders leaves unexplained. */
	sensorResidual: .15,
	/** How far from 1 the gain of one sensor on two recorders can lie. */
	sensorGain: .01,
	/** The same share, and the ratio of misfit where power moves to where it does not, of a derived second. */
	derivedResidual: .12,
	derivedDynamics: 2.5
};
// src/align/by-channel.ts
/** Channels whose detail a second recorder of the same ride would share. */
const compared = [
	"power",
	"cadence",
	"heartRate"
];
/**
* The lag at which each channel of the shifted second agrees best, beyond the offset already applied:
* sensors and links buffer differently, so that heart rate may lag by seconds where power does not.
*/
function byChannel(primary, shifted) {
	return compared.flatMap((channel) => {
		const own = primary.channels[channel];
		const other = shifted.channels[channel];
		if (own === void 0 || other === void 0) return [];
		const best = bestLag(detrend(own), detrend(other), settings$3.channelLag[channel]);
		return best === null ? [] : [{
			channel,
			...best
		}];
	});
}
/** Best lag within ±`reach` seconds of two detrended columns, with its correlation; null without variation. */
function bestLag(own, other, reach) {
	let best = null;
	for (let lag = -reach; lag <= reach; lag++) {
		const correlation = correlationAt(own, other, lag);
		if (correlation !== null && (best === null || correlation > best.correlation)) best = {
			lag,
			correlation
		};
	}
	return best;
}
/** Correlation of columns around zero at one lag; null when either does not vary there. */
function correlationAt(own, other, lag) {
	let products = 0;
	let squares = 0;
	let otherSquares = 0;
	const from = Math.max(0, lag);
	const to = Math.min(own.length, other.length + lag);
	for (let t = from; t < to; t++) {
		const a = own[t];
		const b = other[t - lag];
		if (Number.isNaN(a) || Number.isNaN(b)) continue;
		products += a * b;
		squares += a * a;
		otherSquares += b * b;
	}
	return squares > 0 && otherSquares > 0 ? products / Math.sqrt(squares * otherSquares) : null;
}
/** Takes out the centred moving mean over `channelTrend` seconds; NaN stays NaN. */
function detrend(column) {
	const half = settings$3.channelTrend / 2;
	const sums = new Float64Array(column.length + 1);
	const counts = new Int32Array(column.length + 1);
	column.forEach((value, t) => {
		const valid = !Number.isNaN(value);
		sums[t + 1] = sums[t] + (valid ? value : 0);
		counts[t + 1] = counts[t] + (valid ? 1 : 0);
	});
	return column.map((value, t) => {
		const from = Math.max(0, t - half);
		const to = Math.min(column.length, t + half + 1);
		return value - (sums[to] - sums[from]) / (counts[to] - counts[from]);
	});
}
// src/math/cross-products.ts
var import_fft = /* @__PURE__ */ __toESM((/* @__PURE__ */ __commonJSMin(((exports, module) => {
	function FFT(size) {
		this.size = size | 0;
		if (this.size <= 1 || (this.size & this.size - 1) !== 0) throw new Error("FFT size must be a power of two and bigger than 1");
		this._csize = size << 1;
		var table = new Array(this.size * 2);
		for (var i = 0; i < table.length; i += 2) {
			const angle = Math.PI * i / this.size;
			table[i] = Math.cos(angle);
			table[i + 1] = -Math.sin(angle);
		}
		this.table = table;
		var power = 0;
		for (var t = 1; this.size > t; t <<= 1) power++;
		this._width = power % 2 === 0 ? power - 1 : power;
		this._bitrev = new Array(1 << this._width);
		for (var j = 0; j < this._bitrev.length; j++) {
			this._bitrev[j] = 0;
			for (var shift = 0; shift < this._width; shift += 2) {
				var revShift = this._width - shift - 2;
				this._bitrev[j] |= (j >>> shift & 3) << revShift;
			}
		}
		this._out = null;
		this._data = null;
		this._inv = 0;
	}
	module.exports = FFT;
	FFT.prototype.fromComplexArray = function fromComplexArray(complex, storage) {
		var res = storage || new Array(complex.length >>> 1);
		for (var i = 0; i < complex.length; i += 2) res[i >>> 1] = complex[i];
		return res;
	};
	FFT.prototype.createComplexArray = function createComplexArray() {
		const res = new Array(this._csize);
		for (var i = 0; i < res.length; i++) res[i] = 0;
		return res;
	};
	FFT.prototype.toComplexArray = function toComplexArray(input, storage) {
		var res = storage || this.createComplexArray();
		for (var i = 0; i < res.length; i += 2) {
			res[i] = input[i >>> 1];
			res[i + 1] = 0;
		}
		return res;
	};
	FFT.prototype.completeSpectrum = function completeSpectrum(spectrum) {
		var size = this._csize;
		var half = size >>> 1;
		for (var i = 2; i < half; i += 2) {
			spectrum[size - i] = spectrum[i];
			spectrum[size - i + 1] = -spectrum[i + 1];
		}
	};
	FFT.prototype.transform = function transform(out, data) {
		if (out === data) throw new Error("Input and output buffers must be different");
		this._out = out;
		this._data = data;
		this._inv = 0;
		this._transform4();
		this._out = null;
		this._data = null;
	};
	FFT.prototype.realTransform = function realTransform(out, data) {
		if (out === data) throw new Error("Input and output buffers must be different");
		this._out = out;
		this._data = data;
		this._inv = 0;
		this._realTransform4();
		this._out = null;
		this._data = null;
	};
	FFT.prototype.inverseTransform = function inverseTransform(out, data) {
		if (out === data) throw new Error("Input and output buffers must be different");
		this._out = out;
		this._data = data;
		this._inv = 1;
		this._transform4();
		for (var i = 0; i < out.length; i++) out[i] /= this.size;
		this._out = null;
		this._data = null;
	};
	FFT.prototype._transform4 = function _transform4() {
		var out = this._out;
		var size = this._csize;
		var step = 1 << this._width;
		var len = size / step << 1;
		var outOff;
		var t;
		var bitrev = this._bitrev;
		if (len === 4) for (outOff = 0, t = 0; outOff < size; outOff += len, t++) {
			const off = bitrev[t];
			this._singleTransform2(outOff, off, step);
		}
		else for (outOff = 0, t = 0; outOff < size; outOff += len, t++) {
			const off = bitrev[t];
			this._singleTransform4(outOff, off, step);
		}
		var inv = this._inv ? -1 : 1;
		var table = this.table;
		for (step >>= 2; step >= 2; step >>= 2) {
			len = size / step << 1;
			var quarterLen = len >>> 2;
			for (outOff = 0; outOff < size; outOff += len) {
				var limit = outOff + quarterLen;
				for (var i = outOff, k = 0; i < limit; i += 2, k += step) {
					const A = i;
					const B = A + quarterLen;
					const C = B + quarterLen;
					const D = C + quarterLen;
					const Ar = out[A];
					const Ai = out[A + 1];
					const Br = out[B];
					const Bi = out[B + 1];
					const Cr = out[C];
					const Ci = out[C + 1];
					const Dr = out[D];
					const Di = out[D + 1];
					const MAr = Ar;
					const MAi = Ai;
					const tableBr = table[k];
					const tableBi = inv * table[k + 1];
					const MBr = Br * tableBr - Bi * tableBi;
					const MBi = Br * tableBi + Bi * tableBr;
					const tableCr = table[2 * k];
					const tableCi = inv * table[2 * k + 1];
					const MCr = Cr * tableCr - Ci * tableCi;
					const MCi = Cr * tableCi + Ci * tableCr;
					const tableDr = table[3 * k];
					const tableDi = inv * table[3 * k + 1];
					const MDr = Dr * tableDr - Di * tableDi;
					const MDi = Dr * tableDi + Di * tableDr;
					const T0r = MAr + MCr;
					const T0i = MAi + MCi;
					const T1r = MAr - MCr;
					const T1i = MAi - MCi;
					const T2r = MBr + MDr;
					const T2i = MBi + MDi;
					const T3r = inv * (MBr - MDr);
					const T3i = inv * (MBi - MDi);
					const FAr = T0r + T2r;
					const FAi = T0i + T2i;
					const FCr = T0r - T2r;
					const FCi = T0i - T2i;
					const FBr = T1r + T3i;
					const FBi = T1i - T3r;
					const FDr = T1r - T3i;
					const FDi = T1i + T3r;
					out[A] = FAr;
					out[A + 1] = FAi;
					out[B] = FBr;
					out[B + 1] = FBi;
					out[C] = FCr;
					out[C + 1] = FCi;
					out[D] = FDr;
					out[D + 1] = FDi;
				}
			}
		}
	};
	FFT.prototype._singleTransform2 = function _singleTransform2(outOff, off, step) {
		const out = this._out;
		const data = this._data;
		const evenR = data[off];
		const evenI = data[off + 1];
		const oddR = data[off + step];
		const oddI = data[off + step + 1];
		const leftR = evenR + oddR;
		const leftI = evenI + oddI;
		const rightR = evenR - oddR;
		const rightI = evenI - oddI;
		out[outOff] = leftR;
		out[outOff + 1] = leftI;
		out[outOff + 2] = rightR;
		out[outOff + 3] = rightI;
	};
	FFT.prototype._singleTransform4 = function _singleTransform4(outOff, off, step) {
		const out = this._out;
		const data = this._data;
		const inv = this._inv ? -1 : 1;
		const step2 = step * 2;
		const step3 = step * 3;
		const Ar = data[off];
		const Ai = data[off + 1];
		const Br = data[off + step];
		const Bi = data[off + step + 1];
		const Cr = data[off + step2];
		const Ci = data[off + step2 + 1];
		const Dr = data[off + step3];
		const Di = data[off + step3 + 1];
		const T0r = Ar + Cr;
		const T0i = Ai + Ci;
		const T1r = Ar - Cr;
		const T1i = Ai - Ci;
		const T2r = Br + Dr;
		const T2i = Bi + Di;
		const T3r = inv * (Br - Dr);
		const T3i = inv * (Bi - Di);
		const FAr = T0r + T2r;
		const FAi = T0i + T2i;
		const FBr = T1r + T3i;
		const FBi = T1i - T3r;
		const FCr = T0r - T2r;
		const FCi = T0i - T2i;
		const FDr = T1r - T3i;
		const FDi = T1i + T3r;
		out[outOff] = FAr;
		out[outOff + 1] = FAi;
		out[outOff + 2] = FBr;
		out[outOff + 3] = FBi;
		out[outOff + 4] = FCr;
		out[outOff + 5] = FCi;
		out[outOff + 6] = FDr;
		out[outOff + 7] = FDi;
	};
	FFT.prototype._realTransform4 = function _realTransform4() {
		var out = this._out;
		var size = this._csize;
		var step = 1 << this._width;
		var len = size / step << 1;
		var outOff;
		var t;
		var bitrev = this._bitrev;
		if (len === 4) for (outOff = 0, t = 0; outOff < size; outOff += len, t++) {
			const off = bitrev[t];
			this._singleRealTransform2(outOff, off >>> 1, step >>> 1);
		}
		else for (outOff = 0, t = 0; outOff < size; outOff += len, t++) {
			const off = bitrev[t];
			this._singleRealTransform4(outOff, off >>> 1, step >>> 1);
		}
		var inv = this._inv ? -1 : 1;
		var table = this.table;
		for (step >>= 2; step >= 2; step >>= 2) {
			len = size / step << 1;
			var halfLen = len >>> 1;
			var quarterLen = halfLen >>> 1;
			var hquarterLen = quarterLen >>> 1;
			for (outOff = 0; outOff < size; outOff += len) for (var i = 0, k = 0; i <= hquarterLen; i += 2, k += step) {
				var A = outOff + i;
				var B = A + quarterLen;
				var C = B + quarterLen;
				var D = C + quarterLen;
				var Ar = out[A];
				var Ai = out[A + 1];
				var Br = out[B];
				var Bi = out[B + 1];
				var Cr = out[C];
				var Ci = out[C + 1];
				var Dr = out[D];
				var Di = out[D + 1];
				var MAr = Ar;
				var MAi = Ai;
				var tableBr = table[k];
				var tableBi = inv * table[k + 1];
				var MBr = Br * tableBr - Bi * tableBi;
				var MBi = Br * tableBi + Bi * tableBr;
				var tableCr = table[2 * k];
				var tableCi = inv * table[2 * k + 1];
				var MCr = Cr * tableCr - Ci * tableCi;
				var MCi = Cr * tableCi + Ci * tableCr;
				var tableDr = table[3 * k];
				var tableDi = inv * table[3 * k + 1];
				var MDr = Dr * tableDr - Di * tableDi;
				var MDi = Dr * tableDi + Di * tableDr;
				var T0r = MAr + MCr;
				var T0i = MAi + MCi;
				var T1r = MAr - MCr;
				var T1i = MAi - MCi;
				var T2r = MBr + MDr;
				var T2i = MBi + MDi;
				var T3r = inv * (MBr - MDr);
				var T3i = inv * (MBi - MDi);
				var FAr = T0r + T2r;
				var FAi = T0i + T2i;
				var FBr = T1r + T3i;
				var FBi = T1i - T3r;
				out[A] = FAr;
				out[A + 1] = FAi;
				out[B] = FBr;
				out[B + 1] = FBi;
				if (i === 0) {
					var FCr = T0r - T2r;
					var FCi = T0i - T2i;
					out[C] = FCr;
					out[C + 1] = FCi;
					continue;
				}
				if (i === hquarterLen) continue;
				var ST0r = T1r;
				var ST0i = -T1i;
				var ST1r = T0r;
				var ST1i = -T0i;
				var ST2r = -inv * T3i;
				var ST2i = -inv * T3r;
				var ST3r = -inv * T2i;
				var ST3i = -inv * T2r;
				var SFAr = ST0r + ST2r;
				var SFAi = ST0i + ST2i;
				var SFBr = ST1r + ST3i;
				var SFBi = ST1i - ST3r;
				var SA = outOff + quarterLen - i;
				var SB = outOff + halfLen - i;
				out[SA] = SFAr;
				out[SA + 1] = SFAi;
				out[SB] = SFBr;
				out[SB + 1] = SFBi;
			}
		}
	};
	FFT.prototype._singleRealTransform2 = function _singleRealTransform2(outOff, off, step) {
		const out = this._out;
		const data = this._data;
		const evenR = data[off];
		const oddR = data[off + step];
		const leftR = evenR + oddR;
		const rightR = evenR - oddR;
		out[outOff] = leftR;
		out[outOff + 1] = 0;
		out[outOff + 2] = rightR;
		out[outOff + 3] = 0;
	};
	FFT.prototype._singleRealTransform4 = function _singleRealTransform4(outOff, off, step) {
		const out = this._out;
		const data = this._data;
		const inv = this._inv ? -1 : 1;
		const step2 = step * 2;
		const step3 = step * 3;
		const Ar = data[off];
		const Br = data[off + step];
		const Cr = data[off + step2];
		const Dr = data[off + step3];
		const T0r = Ar + Cr;
		const T1r = Ar - Cr;
		const T2r = Br + Dr;
		const T3r = inv * (Br - Dr);
		const FAr = T0r + T2r;
		const FBr = T1r;
		const FBi = -T3r;
		const FCr = T0r - T2r;
		const FDr = T1r;
		const FDi = T3r;
		out[outOff] = FAr;
		out[outOff + 1] = 0;
		out[outOff + 2] = FBr;
		out[outOff + 3] = FBi;
		out[outOff + 4] = FCr;
		out[outOff + 5] = 0;
		out[outOff + 6] = FDr;
		out[outOff + 7] = FDi;
	};
})))(), 1);
/**
* Cross-correlates two series over every lag, in n log n. Both transforms come from one complex
* transform (a as the real part, b as the imaginary part).
*/
function crossProducts(a, b) {
	const lags = a.length + b.length - 1;
	let size = 2;
	while (size < lags) size *= 2;
	const fft = new import_fft.default(size);
	const packed = fft.createComplexArray();
	for (let t = 0; t < a.length; t++) packed[2 * t] = a[t];
	for (let t = 0; t < b.length; t++) packed[2 * t + 1] = b[t];
	const spectrum = fft.createComplexArray();
	fft.transform(spectrum, packed);
	const { same, turned } = products(spectrum, size);
	for (let i = 0; i < 2 * size; i += 2) {
		packed[i] = same[i] - turned[i + 1];
		packed[i + 1] = same[i + 1] + turned[i];
	}
	fft.inverseTransform(spectrum, packed);
	const forward = new Float64Array(lags);
	const reversed = new Float64Array(lags);
	for (let i = 0; i < lags; i++) {
		const lag = i - (b.length - 1);
		forward[i] = spectrum[2 * ((lag + size) % size)];
		reversed[i] = spectrum[2 * i + 1];
	}
	return {
		forward,
		reversed
	};
}
/** A·conj(B) and A·B from the transform of a + i·b. */
function products(spectrum, size) {
	const same = new Float64Array(2 * size);
	const turned = new Float64Array(2 * size);
	for (let k = 0; k < size; k++) {
		const mirror = (size - k) % size;
		const re = spectrum[2 * k];
		const im = spectrum[2 * k + 1];
		const mirrorRe = spectrum[2 * mirror];
		const mirrorIm = spectrum[2 * mirror + 1];
		const aRe = (re + mirrorRe) / 2;
		const aIm = (im - mirrorIm) / 2;
		const bRe = (im + mirrorIm) / 2;
		const bIm = (mirrorRe - re) / 2;
		same[2 * k] = aRe * bRe + aIm * bIm;
		same[2 * k + 1] = aIm * bRe - aRe * bIm;
		turned[2 * k] = aRe * bRe - aIm * bIm;
		turned[2 * k + 1] = aRe * bIm + aIm * bRe;
	}
	return {
		same,
		turned
	};
}
// src/align/lags.ts
/**
* Correlates residuals over every lag. The gain of a lag is -n/2·ln(1 - r²) for r > 0, the
* log-likelihood of a shared component in n white samples.
*/
function lags(primary, second) {
	const products = crossProducts(primary, second);
	const own = energies(primary);
	const other = energies(second);
	const mirrored = energies(second.toReversed());
	const count = primary.length + second.length - 1;
	const first = -(second.length - 1);
	const least = Math.max(settings$3.leastOverlapSeconds, settings$3.leastOverlapShare * Math.min(own.active, other.active));
	const gain = new Float64Array(count);
	const correlation = new Float64Array(count);
	let surrogate = {
		gain: 0,
		correlation: 0
	};
	let considered = 0;
	for (let i = 0; i < count; i++) {
		const lag = i + first;
		const from = Math.max(0, lag);
		const to = Math.min(primary.length, second.length + lag);
		const n = Math.min(own.count(from, to), other.count(from - lag, to - lag));
		if (n < least) continue;
		considered++;
		const energy = own.sum(from, to);
		correlation[i] = ratio$2(products.forward[i], energy * other.sum(from - lag, to - lag));
		gain[i] = gainOf(correlation[i], n);
		const chance = ratio$2(products.reversed[i], energy * mirrored.sum(from - lag, to - lag));
		const chanceGain = gainOf(chance, n);
		if (chanceGain > surrogate.gain) surrogate = {
			gain: chanceGain,
			correlation: chance
		};
	}
	return considered === 0 ? null : {
		first,
		gain,
		correlation,
		surrogate
	};
}
function ratio$2(product, energies) {
	return energies > 0 ? Math.max(-1, Math.min(1, product / Math.sqrt(energies))) : 0;
}
function gainOf(correlation, n) {
	return correlation > 0 ? -n / 2 * Math.log(1 - Math.min(correlation, .999999) ** 2) : 0;
}
/** Running sums of squares and of how many residuals count, so that any overlap costs one subtraction. */
function energies(residual) {
	const squares = new Float64Array(residual.length + 1);
	const counts = new Int32Array(residual.length + 1);
	for (let t = 0; t < residual.length; t++) {
		squares[t + 1] = squares[t] + residual[t] ** 2;
		counts[t + 1] = counts[t] + (residual[t] === 0 ? 0 : 1);
	}
	return {
		active: counts[residual.length],
		sum: (from, to) => squares[to] - squares[from],
		count: (from, to) => counts[to] - counts[from]
	};
}
/** Lags that are highest within `sameAnswerSeconds` either side, the best first, at most `most`. */
function peaks({ first, gain }, most, leastGain) {
	const reach = settings$3.sameAnswerSeconds;
	const found = [];
	for (let i = 0; i < gain.length; i++) {
		if (gain[i] < leastGain || gain[i] === 0) continue;
		let highest = true;
		for (let j = Math.max(0, i - reach); j <= Math.min(gain.length - 1, i + reach) && highest; j++) highest = gain[j] < gain[i] || j >= i;
		if (highest) found.push({
			lag: i + first,
			gain: gain[i]
		});
	}
	return found.sort((a, b) => b.gain - a.gain || a.lag - b.lag).slice(0, most);
}
/** The gain of one lag over a stretch of the primary alone. */
function gainWithin(primary, second, from, to, lag) {
	let products = 0;
	let own = 0;
	let other = 0;
	let count = 0;
	for (let t = Math.max(from, lag); t < Math.min(to, second.length + lag); t++) {
		const a = primary[t];
		const b = second[t - lag];
		products += a * b;
		own += a * a;
		other += b * b;
		if (a !== 0 && b !== 0) count++;
	}
	return own > 0 && other > 0 ? gainOf(products / Math.sqrt(own * other), count) : 0;
}
// src/align/choose.ts
/**
* One independent sample of detrended cadence or heart rate in so many seconds (from memory: cadence
* forgets itself in a few seconds, heart rate in about half a minute; the cautious side is taken).
*/
const secondsPerSample = 20;
/**
* Chooses the lag, or one lag per stretch where a clock skips pauses. Power alone decides when it beats
* chance, and every other answer by the margin, in each stretch. Otherwise clocks that agree, or else
* cadence or heart rate, may choose among the lags that power cannot tell apart; never against power.
*/
function choose$1(from) {
	const { answers, surrogateGain } = from;
	const best = answers[0];
	const whole = (lag) => [{
		stretch: [0, from.length],
		lag
	}];
	if (best === void 0) return {
		lag: from.clockLag,
		secure: false,
		reason: "nothing-fits",
		margin: 0,
		segments: whole(from.clockLag)
	};
	const margin = best.gain - (answers[1]?.gain ?? 0);
	if (best.gain < settings$3.surrogateFactor * surrogateGain || best.gain < settings$3.margin) return {
		lag: best.lag,
		secure: false,
		reason: "nothing-fits",
		margin,
		segments: whole(best.lag)
	};
	const real = answers.filter(({ gain }) => gain > settings$3.surrogateFactor * surrogateGain);
	const segments = from.segmentsAmong(withNeighbours(real.map(({ lag }) => lag)));
	if (segments.some(({ lag }) => !sameAnswer(lag, segments[0].lag))) return chooseBySegment(from, segments);
	if (margin >= settings$3.margin) return {
		lag: best.lag,
		secure: true,
		reason: "power-agrees",
		margin,
		segments
	};
	return chooseAmongEquals(from, margin, segments);
}
/** Each stretch must stand on its own: one that another answer fits as well is left out. */
function chooseBySegment(from, segments) {
	const margins = segments.map(({ stretch, lag }) => {
		const others = from.answers.filter((answer) => !sameAnswer(answer.lag, lag));
		return from.gainWithin(stretch, lag) - Math.max(0, ...others.map((answer) => from.gainWithin(stretch, answer.lag)));
	});
	const kept = segments.filter((_, i) => margins[i] >= settings$3.margin);
	const longest = longestOf(kept.length > 0 ? kept : segments);
	const seconds = kept.reduce((sum, { stretch }) => sum + stretch[1] - stretch[0], 0);
	const all = segments.reduce((sum, { stretch }) => sum + stretch[1] - stretch[0], 0);
	const secure = seconds * 2 >= all;
	return {
		lag: longest.lag,
		secure,
		reason: secure ? "power-agrees" : "several-lags-fit",
		margin: Math.min(...secure ? margins.filter((m) => m >= settings$3.margin) : margins),
		segments: secure ? kept : [{
			stretch: [0, from.length],
			lag: longest.lag
		}]
	};
}
function chooseAmongEquals(from, margin, segments) {
	const best = from.answers[0];
	const equals = from.answers.filter(({ gain }) => best.gain - gain < settings$3.margin);
	const chosen = (lag, reason, lead) => ({
		lag,
		secure: true,
		reason,
		margin: lead,
		segments: from.segmentsAmong(withNeighbours([lag]))
	});
	const near = equals.filter(({ lag }) => Math.abs(lag - from.clockLag) <= settings$3.clockSeconds);
	if (near.length === 1) return chosen(near[0].lag, "clock-chose", margin);
	const byOthers = equals.map(({ lag }) => ({
		lag,
		gain: evidence(from.agreement(lag))
	})).sort((a, b) => b.gain - a.gain);
	const lead = byOthers[0].gain - (byOthers[1]?.gain ?? 0);
	if (lead >= settings$3.margin) return chosen(byOthers[0].lag, "channel-chose", lead);
	return {
		lag: best.lag,
		secure: false,
		reason: "several-lags-fit",
		margin,
		segments
	};
}
function evidence(agreement) {
	return agreement === null ? 0 : gainOf(agreement.correlation, agreement.seconds / secondsPerSample);
}
const sameAnswer = (a, b) => Math.abs(a - b) <= settings$3.sameAnswerSeconds;
function withNeighbours(lags) {
	const reach = settings$3.sameAnswerSeconds;
	const all = lags.flatMap((lag) => Array.from({ length: 2 * reach + 1 }, (_, i) => lag + i - reach));
	return [...new Set(all)].sort((a, b) => a - b);
}
function longestOf(segments) {
	const length = ({ stretch }) => stretch[1] - stretch[0];
	return segments.reduce((longest, segment) => length(segment) > length(longest) ? segment : longest);
}
// src/math/least-squares.ts
/**
* Weighted linear least squares by Householder reflections (Golub 1965), which keep their digits where
* the normal equations lose theirs.
*
* @param columns the regressors, one array each, all as long as `y`; an intercept is a column of ones
* @param weights not negative; ones when left out
* @returns null when the columns are not independent to working precision, or too few rows carry weight
*/
function leastSquares(columns, y, weights) {
	const rows = y.length;
	const size = columns.length;
	const roots = weights?.map(Math.sqrt);
	const a = columns.map((column) => scaled(column, roots));
	const b = scaled(y, roots);
	const diagonal = new Float64Array(size);
	for (let k = 0; k < size; k++) {
		const norm = lengthFrom(a[k], k);
		if (!(norm > 1e-12 * lengthFrom(a[k], 0)) || k >= rows) return null;
		const pivot = a[k][k] > 0 ? -norm : norm;
		a[k][k] -= pivot;
		diagonal[k] = pivot;
		const squared = -pivot * a[k][k];
		for (const other of [...a.slice(k + 1), b]) reflect(a[k], other, k, squared);
	}
	const upper = (i, j) => i === j ? diagonal[i] : a[j][i];
	const coefficients = backSubstitute(upper, b, size);
	const inverse = invertedSquare(upper, size);
	const residuals = y.slice();
	for (let k = 0; k < size; k++) {
		const column = columns[k];
		const coefficient = coefficients[k];
		for (let i = 0; i < rows; i++) residuals[i] -= column[i] * coefficient;
	}
	return {
		coefficients,
		residuals,
		inverse
	};
}
function scaled(column, roots) {
	const out = column.slice();
	if (roots !== void 0) for (let i = 0; i < out.length; i++) out[i] *= roots[i];
	return out;
}
function lengthFrom(column, from) {
	let sum = 0;
	for (let i = from; i < column.length; i++) sum += column[i] ** 2;
	return Math.sqrt(sum);
}
function reflect(mirror, column, from, squared) {
	let product = 0;
	for (let i = from; i < column.length; i++) product += mirror[i] * column[i];
	const step = product / squared;
	for (let i = from; i < column.length; i++) column[i] -= step * mirror[i];
}
function backSubstitute(upper, right, size) {
	const solution = new Float64Array(size);
	for (let i = size - 1; i >= 0; i--) {
		let value = right[i];
		for (let j = i + 1; j < size; j++) value -= upper(i, j) * solution[j];
		solution[i] = value / upper(i, i);
	}
	return solution;
}
/** R⁻¹·R⁻ᵀ. */
function invertedSquare(upper, size) {
	const unit = (k) => Float64Array.from({ length: size }, (_, i) => i === k ? 1 : 0);
	const inverted = Array.from({ length: size }, (_, k) => backSubstitute(upper, unit(k), size));
	return Array.from({ length: size }, (_, i) => Float64Array.from({ length: size }, (_, j) => inverted.reduce((sum, column) => sum + column[i] * column[j], 0)));
}
// src/align/origin.ts
/**
* How the second follows from the primary: the best gain, offset and three-second filter, and what is
* left after it. Seconds count that are valid on both and their neighbours, with power on either. Null
* when there are too few.
*/
function originEvidence(own, other) {
	const used = [];
	for (let t = 1; t + 1 < own.length; t++) {
		const valid = own[t - 1] + own[t] + own[t + 1] + other[t];
		if (!Number.isNaN(valid) && (own[t] > 0 || other[t] > 0)) used.push(t);
	}
	if (used.length < settings$3.leastOverlapSeconds) return null;
	const y = Float64Array.from(used, (t) => other[t]);
	const fit = leastSquares([new Float64Array(used.length).fill(1), ...[
		-1,
		0,
		1
	].map((lag) => Float64Array.from(used, (t) => own[t - lag]))], y);
	if (fit === null) return null;
	const moves = Float64Array.from(used, (t) => Math.abs(own[t] - own[t - 1]) + Math.abs(own[t + 1] - own[t]));
	return {
		left: detail(fit.residuals, used) / detail(y, used),
		gain: fit.coefficients[1] + fit.coefficients[2] + fit.coefficients[3],
		dynamics: dynamics(fit.residuals, moves)
	};
}
/**
* Whether the second is a measurement of its own. One sensor seen by two recorders differs by radio
* timing and rounding alone: little of the detail is left over, and the gain is 1. Two meters leave much
* more, most of it where power moves fast. What leaves little, with another gain and the same misfit
* whether power moves or not, was computed from the first.
*/
function originOf(evidence) {
	if (evidence === null) return "unknown";
	const { left, gain, dynamics: moving } = evidence;
	const sameGain = Math.abs(gain - 1) <= settings$3.sensorGain;
	if (sameGain && left <= settings$3.sensorResidual) return "same sensor";
	if (!sameGain && left <= settings$3.derivedResidual && moving <= settings$3.derivedDynamics) return "derived";
	return "independent";
}
/** Sum of squared second-to-second changes, only between neighbours in time: the detail of a trace. */
function detail(values, times) {
	let squares = 0;
	for (let i = 1; i < values.length; i++) if (times[i] - times[i - 1] === 1) squares += (values[i] - values[i - 1]) ** 2;
	return squares;
}
/** Mean square misfit in the third of the seconds where power moves most, over that where it moves least. */
function dynamics(residuals, moves) {
	const sorted = moves.slice().sort();
	const slow = sorted[Math.floor(sorted.length / 3)];
	const fast = sorted[Math.floor(2 * sorted.length / 3)];
	const meanSquare = (counts) => {
		let sum = 0;
		let count = 0;
		residuals.forEach((residual, i) => {
			if (!counts(moves[i])) return;
			sum += residual ** 2;
			count++;
		});
		return sum / count;
	};
	const still = meanSquare((move) => move <= slow);
	return still > 0 ? meanSquare((move) => move >= fast) / still : Number.POSITIVE_INFINITY;
}
// node_modules/simple-statistics/dist/simple-statistics.mjs
/**
* This is the internal implementation of quantiles: when you know
* that the order is sorted, you don't need to re-sort it, and the computations
* are faster.
*
* This implements the linear interpolation method (type=7 in R/numpy),
* which is the default in numpy.percentile and R's quantile.
*
* @param {Array<number>} x sample of one or more data points
* @param {number} p desired quantile: a number between 0 to 1, inclusive
* @returns {number} quantile value
* @throws {Error} if p ix outside of the range from 0 to 1
* @throws {Error} if x is empty
* @example
* quantileSorted([3, 6, 7, 8, 8, 9, 10, 13, 15, 16, 20], 0.5); // => 9
*/
function quantileSorted(x, p) {
	var idx = (x.length - 1) * p;
	if (x.length === 0) throw new Error("quantile requires at least one data point.");
	else if (p < 0 || p > 1) throw new Error("quantiles must be between 0 and 1");
	else if (p === 1) return x[x.length - 1];
	else if (p === 0) return x[0];
	else if (idx % 1 !== 0) {
		var lower = Math.floor(idx);
		var upper = Math.ceil(idx);
		var fraction = idx - lower;
		return x[lower] + fraction * (x[upper] - x[lower]);
	} else return x[idx];
}
/**
* Rearrange items in `arr` so that all items in `[left, k]` range are the smallest.
* The `k`-th element will have the `(k - left + 1)`-th smallest value in `[left, right]`.
*
* Implements Floyd-Rivest selection algorithm https://en.wikipedia.org/wiki/Floyd-Rivest_algorithm
*
* @param {Array<number>} arr input array
* @param {number} k pivot index
* @param {number} [left] left index
* @param {number} [right] right index
* @returns {void} mutates input array
* @example
* var arr = [65, 28, 59, 33, 21, 56, 22, 95, 50, 12, 90, 53, 28, 77, 39];
* quickselect(arr, 8);
* // = [39, 28, 28, 33, 21, 12, 22, 50, 53, 56, 59, 65, 90, 77, 95]
*/
function quickselect(arr, k, left, right) {
	left = left || 0;
	right = right || arr.length - 1;
	while (right > left) {
		if (right - left > 600) {
			var n = right - left + 1;
			var m = k - left + 1;
			var z = Math.log(n);
			var s = .5 * Math.exp(2 * z / 3);
			var sd = .5 * Math.sqrt(z * s * (n - s) / n);
			if (m - n / 2 < 0) sd *= -1;
			quickselect(arr, k, Math.max(left, Math.floor(k - m * s / n + sd)), Math.min(right, Math.floor(k + (n - m) * s / n + sd)));
		}
		var t = arr[k];
		var i = left;
		var j = right;
		swap(arr, left, k);
		if (arr[right] > t) swap(arr, left, right);
		while (i < j) {
			swap(arr, i, j);
			i++;
			j--;
			while (arr[i] < t) i++;
			while (arr[j] > t) j--;
		}
		if (arr[left] === t) swap(arr, left, j);
		else {
			j++;
			swap(arr, j, right);
		}
		if (j <= k) left = j + 1;
		if (k <= j) right = j - 1;
	}
}
function swap(arr, i, j) {
	var tmp = arr[i];
	arr[i] = arr[j];
	arr[j] = tmp;
}
/**
* The [quantile](https://en.wikipedia.org/wiki/Quantile):
* this is a population quantile, since we assume to know the entire
* dataset in this library. This implementation uses linear interpolation,
* equivalent to R's type=7 and numpy's default percentile method.
*
* Sample is a one-dimensional array of numbers,
* and p is either a decimal number from 0 to 1 or an array of decimal
* numbers from 0 to 1.
* In terms of a k/q quantile, p = k/q - it's just dealing with fractions or dealing
* with decimal values.
* When p is an array, the result of the function is also an array containing the appropriate
* quantiles in input order
*
* @param {Array<number>} x sample of one or more numbers
* @param {Array<number> | number} p the desired quantile, as a number between 0 and 1
* @returns {number} quantile
* @example
* quantile([3, 6, 7, 8, 8, 9, 10, 13, 15, 16, 20], 0.5); // => 9
*/
function quantile$1(x, p) {
	var copy = x.slice();
	if (Array.isArray(p)) {
		multiQuantileSelect(copy, p);
		var results = [];
		for (var i = 0; i < p.length; i++) results[i] = quantileSorted(copy, p[i]);
		return results;
	} else {
		quantileSelect(copy, quantileIndex(copy.length, p), 0, copy.length - 1);
		return quantileSorted(copy, p);
	}
}
function quantileSelect(arr, k, left, right) {
	if (k % 1 === 0) quickselect(arr, k, left, right);
	else {
		k = Math.floor(k);
		quickselect(arr, k, left, right);
		quickselect(arr, k + 1, k + 1, right);
	}
}
function multiQuantileSelect(arr, p) {
	var positions = /* @__PURE__ */ new Set();
	for (var i = 0; i < p.length; i++) {
		var idx = quantileIndex(arr.length, p[i]);
		positions.add(Math.floor(idx));
		positions.add(Math.ceil(idx));
	}
	var indices = Array.from(positions).sort(compare$3);
	multiselect(arr, indices, 0, indices.length - 1, 0, arr.length - 1);
}
function multiselect(arr, indices, lo, hi, left, right) {
	if (lo > hi) return;
	var mid = lo + hi >> 1;
	quickselect(arr, indices[mid], left, right);
	multiselect(arr, indices, lo, mid - 1, left, indices[mid] - 1);
	multiselect(arr, indices, mid + 1, hi, indices[mid] + 1, right);
}
function compare$3(a, b) {
	return a - b;
}
function quantileIndex(len, p) {
	var idx = (len - 1) * p;
	if (p === 1) return len - 1;
	else if (p === 0) return 0;
	else if (idx % 1 !== 0) return idx;
	else return idx;
}
/**
* The [median](http://en.wikipedia.org/wiki/Median) is
* the middle number of a list. This is often a good indicator of 'the middle'
* when there are outliers that skew the `mean()` value.
* This is a [measure of central tendency](https://en.wikipedia.org/wiki/Central_tendency):
* a method of finding a typical or central value of a set of numbers.
*
* The median isn't necessarily one of the elements in the list: the value
* can be the average of two elements if the list has an even length
* and the two central values are different.
*
* @param {Array<number>} x input
* @returns {number} median value
* @example
* median([10, 2, 5, 100, 2, 1]); // => 3.5
*/
function median$1(x) {
	return +quantile$1(x, .5);
}
/**
* The [median](http://en.wikipedia.org/wiki/Median) is
* the middle number of a list. This is often a good indicator of 'the middle'
* when there are outliers that skew the `mean()` value.
* This is a [measure of central tendency](https://en.wikipedia.org/wiki/Central_tendency):
* a method of finding a typical or central value of a set of numbers.
*
* The median isn't necessarily one of the elements in the list: the value
* can be the average of two elements if the list has an even length
* and the two central values are different.
*
* @param {Array<number>} sorted input
* @returns {number} median value
* @example
* medianSorted([10, 2, 5, 100, 2, 1]); // => 52.5
*/
function medianSorted(sorted) {
	return quantileSorted(sorted, .5);
}
/**
* [Bayesian Classifier](http://en.wikipedia.org/wiki/Naive_Bayes_classifier)
*
* This is a naïve bayesian classifier that takes
* singly-nested objects.
*
* @class
* @example
* var bayes = new BayesianClassifier();
* bayes.train({
*   species: 'Cat'
* }, 'animal');
* var result = bayes.score({
*   species: 'Cat'
* })
* // result
* // {
* //   animal: 1
* // }
*/
var BayesianClassifier = function BayesianClassifier() {
	this.totalCount = 0;
	this.data = {};
};
/**
* Train the classifier with a new item, which has a single
* dimension of Javascript literal keys and values.
*
* @param {Object} item an object with singly-deep properties
* @param {string} category the category this item belongs to
* @return {undefined} adds the item to the classifier
*/
BayesianClassifier.prototype.train = function train(item, category) {
	if (!this.data[category]) this.data[category] = {};
	for (var k in item) {
		var v = item[k];
		if (this.data[category][k] === void 0) this.data[category][k] = {};
		if (this.data[category][k][v] === void 0) this.data[category][k][v] = 0;
		this.data[category][k][v]++;
	}
	this.totalCount++;
};
/**
* Generate a score of how well this item matches all
* possible categories based on its attributes
*
* @param {Object} item an item in the same format as with train
* @returns {Object} of probabilities that this item belongs to a
* given category.
*/
BayesianClassifier.prototype.score = function score(item) {
	var odds = {};
	var category;
	for (var k in item) {
		var v = item[k];
		for (category in this.data) {
			if (odds[category] === void 0) odds[category] = {};
			if (this.data[category][k]) odds[category][k + "_" + v] = (this.data[category][k][v] || 0) / this.totalCount;
			else odds[category][k + "_" + v] = 0;
		}
	}
	var oddsSums = {};
	for (category in odds) {
		oddsSums[category] = 0;
		for (var combination in odds[category]) oddsSums[category] += odds[category][combination];
	}
	return oddsSums;
};
var COEFFICIENTS = [
	.9999999999999971,
	57.15623566586292,
	-59.59796035547549,
	14.136097974741746,
	-.4919138160976202,
	3399464998481189e-20,
	4652362892704858e-20,
	-9837447530487956e-20,
	.0001580887032249125,
	-.00021026444172410488,
	.00021743961811521265,
	-.0001643181065367639,
	8441822398385275e-20,
	-26190838401581408e-21,
	36899182659531625e-22
];
var g = 607 / 128;
var LOGSQRT2PI = Math.log(Math.sqrt(2 * Math.PI));
/**
* Compute the logarithm of the [gamma function](https://en.wikipedia.org/wiki/Gamma_function) of a value using Lanczos' approximation.
* This function takes as input any real-value n greater than 0.
* This function is useful for values of n too large for the normal gamma function (n > 165).
* The code is based on Lanczo's Gamma approximation, defined [here](http://my.fit.edu/~gabdo/gamma.txt).
*
* @param {number} n Any real number greater than zero.
* @returns {number} The logarithm of gamma of the input value.
*
* @example
* gammaln(500); // 2605.1158503617335
* gammaln(2.4); // 0.21685932244884043
*/
function gammaln(n) {
	if (n <= 0) return Number.POSITIVE_INFINITY;
	n--;
	var a = COEFFICIENTS[0];
	for (var i = 1; i < 15; i++) a += COEFFICIENTS[i] / (n + i);
	var tmp = g + .5 + n;
	return LOGSQRT2PI + Math.log(a) - tmp + (n + .5) * Math.log(tmp);
}
var SQRT_2PI$1 = Math.sqrt(2 * Math.PI);
function cumulativeDistribution(z) {
	var sum = z;
	var tmp = z;
	for (var i = 1; i < 30; i++) {
		tmp *= z * z / (2 * i + 1);
		sum += tmp;
	}
	return Math.round((.5 + sum / SQRT_2PI$1 * Math.exp(-z * z / 2)) * 1e4) / 1e4;
}
/**
* A standard normal table, also called the unit normal table or Z table,
* is a mathematical table for the values of Φ (phi), which are the values of
* the [cumulative distribution function](https://en.wikipedia.org/wiki/Normal_distribution#Cumulative_distribution_function)
* of the normal distribution. It is used to find the probability that a
* statistic is observed below, above, or between values on the standard
* normal distribution, and by extension, any normal distribution.
*/
var standardNormalTable = [];
for (var z$1 = 0; z$1 <= 3.09; z$1 += .01) standardNormalTable.push(cumulativeDistribution(z$1));
/**
* This is a single-layer [Perceptron Classifier](http://en.wikipedia.org/wiki/Perceptron) that takes
* arrays of numbers and predicts whether they should be classified
* as either 0 or 1 (negative or positive examples).
* @class
* @example
* // Create the model
* var p = new PerceptronModel();
* // Train the model with input with a diagonal boundary.
* for (var i = 0; i < 5; i++) {
*     p.train([1, 1], 1);
*     p.train([0, 1], 0);
*     p.train([1, 0], 0);
*     p.train([0, 0], 0);
* }
* p.predict([0, 0]); // 0
* p.predict([0, 1]); // 0
* p.predict([1, 0]); // 0
* p.predict([1, 1]); // 1
*/
var PerceptronModel = function PerceptronModel() {
	this.weights = [];
	this.bias = 0;
};
/**
* **Predict**: Use an array of features with the weight array and bias
* to predict whether an example is labeled 0 or 1.
*
* @param {Array<number>} features an array of features as numbers
* @returns {number|null} 1 if the score is over 0, otherwise 0; null if
* the model has not been trained on feature arrays of this length
*/
PerceptronModel.prototype.predict = function predict(features) {
	if (features.length !== this.weights.length) return null;
	var score = 0;
	for (var i = 0; i < this.weights.length; i++) score += this.weights[i] * features[i];
	score += this.bias;
	if (score > 0) return 1;
	else return 0;
};
/**
* **Train** the classifier with a new example, which is
* a numeric array of features and a 0 or 1 label.
*
* @param {Array<number>} features an array of features as numbers
* @param {number} label either 0 or 1
* @returns {PerceptronModel|null} this, or null if the label is not 0 or 1
*/
PerceptronModel.prototype.train = function train(features, label) {
	if (label !== 0 && label !== 1) return null;
	if (features.length !== this.weights.length) {
		this.weights = features.slice();
		this.bias = 1;
	}
	var prediction = this.predict(features);
	if (typeof prediction === "number" && prediction !== label) {
		var gradient = label - prediction;
		for (var i = 0; i < this.weights.length; i++) this.weights[i] += gradient * features[i];
		this.bias += gradient;
	}
	return this;
};
// src/math/normal.ts
/**
* Quantile of the standard normal distribution: Wichura (1988), Algorithm AS 241, Appl. Statist. 37:477,
* routine PPND7, and one step of Newton's method on the probability, to about 14 digits.
*
* @param p probability, above 0 and below 1
*/
function normalQuantile(p) {
	if (p > .5) return -normalQuantile(1 - p);
	const start = roughQuantile(p);
	const density = Math.exp(-start * start / 2) / Math.sqrt(2 * Math.PI);
	return start - (normalProbability(start) - p) / density;
}
function roughQuantile(p) {
	const q = p - .5;
	if (Math.abs(q) <= .425) {
		const r = .180625 - q * q;
		return q * (((59.10937472 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179) / (((67.1875636 * r + 78.757757664) * r + 17.895169469) * r + 1);
	}
	const tail = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
	const far = tail > 5;
	const r = tail - (far ? 5 : 1.6);
	const value = far ? (((.17337203997 * r + 1.3067284816) * r + 3.081226386) * r + 6.657905115) / ((.012258202635 * r + .24197894225) * r + 1) : (((.17023821103 * r + 1.3067284816) * r + 2.75681539) * r + 1.4234372777) / ((.12021132975 * r + .7370016425) * r + 1);
	return q < 0 ? -value : value;
}
/**
* Probability that a standard normal value is at most z: the series for the middle, the continued
* fraction for the tails (Abramowitz & Stegun 26.2.11 and 26.2.14), to about 14 digits.
*/
function normalProbability(z) {
	const x = Math.abs(z);
	const density = Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
	if (x < 3) {
		let term = x;
		let sum = x;
		for (let k = 3; term > 1e-17 * sum; k += 2) {
			term *= x * x / k;
			sum += term;
		}
		return z < 0 ? .5 - density * sum : .5 + density * sum;
	}
	let fraction = 0;
	for (let k = 60; k > 0; k--) fraction = k / (x + fraction);
	const tail = density / (x + fraction);
	return z < 0 ? tail : 1 - tail;
}
// src/math/student.ts
/**
* Probability that Student's t with `freedom` degrees of freedom is at most t, by the continued
* fraction of the incomplete beta function (Abramowitz & Stegun 26.5.8 and 26.7.1).
*/
function studentProbability(t, freedom) {
	const tail = incompleteBeta(freedom / (freedom + t * t), freedom / 2, .5) / 2;
	return t < 0 ? tail : 1 - tail;
}
/**
* Quantile of Student's t, by bisection on the probability from a bracket around the normal quantile.
*
* @param p probability, above 0 and below 1
* @param freedom degrees of freedom, at least 1; need not be whole
*/
function studentQuantile(p, freedom) {
	if (p < .5) return -studentQuantile(1 - p, freedom);
	let low = 0;
	let high = Math.max(1, normalQuantile(p));
	while (studentProbability(high, freedom) < p) high *= 2;
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if (studentProbability(middle, freedom) < p) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
function incompleteBeta(x, a, b) {
	if (x <= 0) return 0;
	if (x >= 1) return 1;
	if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
	const front = Math.exp(gammaln(a + b) - gammaln(a) - gammaln(b) + a * Math.log(x) + b * Math.log(1 - x));
	let fraction = 0;
	for (let m = 100; m > 0; m--) fraction = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m)) / (1 + -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1)) / (1 + fraction));
	return front / (a * (1 + -(a + b) * x / (a + 1) / (1 + fraction)));
}
// src/align/refine.ts
/**
* Lags to a fraction of a second in windows of ten minutes: the primary is fitted as a short filter over
* the second (five seconds around the whole-second lag), and the filter's centre of mass is its delay.
* Unlike the top of a correlation it does not favour whole seconds.
*/
function delays(own, other, segments) {
	const width = settings$3.delayWindow;
	return segments.flatMap(({ stretch, lag }) => {
		const found = [];
		for (let from = stretch[0]; from + settings$3.leastDelayWindow <= stretch[1]; from += width) {
			const to = Math.min(from + width, stretch[1]);
			const shift = to - from < settings$3.leastDelayWindow ? null : delayWithin(own, other, from, to, lag);
			if (shift !== null) found.push({
				at: (from + to) / 2,
				lag: lag + shift
			});
		}
		return found;
	});
}
/**
* Each segment with the lag that its windows agree on, to a fraction of a second: the whole second with the
* highest correlation favours the crisper edge of an average, its centre of mass is where power belongs.
*/
function settle(segments, found) {
	return segments.map((segment) => {
		const [from, to] = segment.stretch;
		const inside = found.filter(({ at }) => at >= from && at < to).map(({ lag }) => lag);
		return inside.length === 0 ? segment : {
			...segment,
			lag: mean$3(inside)
		};
	});
}
const taps = [
	-2,
	-1,
	0,
	1,
	2
];
function delayWithin(own, other, from, to, lag) {
	const used = [];
	for (let t = Math.max(from, lag + 2); t < Math.min(to, other.length + lag - 2); t++) {
		let sum = own[t];
		for (const tap of taps) sum += other[t - lag - tap];
		if (!Number.isNaN(sum)) used.push(t);
	}
	if (used.length * 2 < to - from) return null;
	const columns = taps.map((tap) => Float64Array.from(used, (t) => other[t - lag - tap]));
	const y = Float64Array.from(used, (t) => own[t]);
	const fit = leastSquares([new Float64Array(used.length).fill(1), ...columns], y);
	if (fit === null) return null;
	const weights = taps.map((_, k) => fit.coefficients[k + 1]);
	const gain = weights.reduce((a, b) => a + b, 0);
	const centre = weights.reduce((sum, weight, k) => sum + weight * taps[k], 0) / gain;
	return gain > .3 && Math.abs(centre) <= 2 ? centre : null;
}
/**
* The lag of the stretch that the whole-second lag was chosen for, with a 95 % interval from its windows.
* Never narrower than ±0.1 s: a link's latency of that size cannot be told from a clock. With fewer than
* three windows it is the whole second, ±1 s.
*/
function lagOf(found, chosen) {
	const lags = found.map(({ lag }) => lag).filter((lag) => Math.abs(lag - chosen) <= settings$3.sameAnswerSeconds);
	if (lags.length < 3) return {
		value: chosen,
		low: chosen - 1,
		high: chosen + 1
	};
	const value = mean$3(lags);
	const spread = Math.sqrt(lags.reduce((sum, lag) => sum + (lag - value) ** 2, 0) / (lags.length - 1));
	const half = Math.max(.1, studentQuantile(.975, lags.length - 1) * spread / Math.sqrt(lags.length));
	return {
		value,
		low: value - half,
		high: value + half
	};
}
/**
* How the two clocks run apart, in parts per million of the primary's time; positive when the second's
* clock runs slow. Null when there are too few windows.
*/
function driftOf(found, chosen) {
	const points = found.filter(({ lag }) => Math.abs(lag - chosen) <= settings$3.sameAnswerSeconds);
	if (points.length < settings$3.driftWindows) return null;
	const meanAt = mean$3(points.map(({ at }) => at));
	const meanLag = mean$3(points.map(({ lag }) => lag));
	const spread = points.reduce((sum, { at }) => sum + (at - meanAt) ** 2, 0);
	const slope = points.reduce((sum, { at, lag }) => sum + (at - meanAt) * (lag - meanLag), 0) / spread;
	const misfit = points.reduce((sum, { at, lag }) => sum + (lag - meanLag - slope * (at - meanAt)) ** 2, 0);
	const freedom = points.length - 2;
	const half = studentQuantile(.975, freedom) * Math.sqrt(misfit / freedom / spread);
	return {
		value: slope * 1e6,
		low: (slope - half) * 1e6,
		high: (slope + half) * 1e6
	};
}
function mean$3(values) {
	return values.reduce((a, b) => a + b, 0) / values.length;
}
// src/align/segments.ts
/**
* Finds which lag holds in which stretch, for clocks that skip pauses or creep: the most likely path
* through windows of half a minute (Viterbi 1967), where a jump costs `jumpCost` and a creep of one
* second `creepCost`. The likelihood of a window is that of residuals that share a component of
* correlation `correlation`, against none.
*/
function segments(primary, second, candidates, correlation) {
	const width = settings$3.segmentWindow;
	const windows = Math.ceil(primary.length / width);
	const states = candidates.length;
	const from = Array.from({ length: windows }, () => new Int16Array(states));
	let score = new Float64Array(states);
	for (let w = 0; w < windows; w++) {
		const next = new Float64Array(states);
		const best = score.indexOf(Math.max(...score));
		for (let s = 0; s < states; s++) {
			let origin = s;
			let value = score[s];
			const jumped = score[best] - settings$3.jumpCost;
			if (jumped > value) [origin, value] = [best, jumped];
			for (let other = 0; other < states; other++) {
				if (Math.abs(candidates[other] - candidates[s]) !== 1) continue;
				const crept = score[other] - settings$3.creepCost;
				if (crept > value) [origin, value] = [other, crept];
			}
			from[w][s] = origin;
			next[s] = value + likelihood(primary, second, w * width, width, candidates[s], correlation);
		}
		score = next;
	}
	return sharpen(primary, second, merge(backtrack(from, score), candidates, primary.length), correlation);
}
function likelihood(primary, second, from, width, lag, correlation) {
	let sum = 0;
	const to = Math.min(from + width, primary.length, second.length + lag);
	for (let t = Math.max(from, lag); t < to; t++) sum += likelihoodOf(primary[t], second[t - lag], correlation);
	return sum;
}
function likelihoodOf(a, b, correlation) {
	if (a === 0 || b === 0) return 0;
	const left = 1 - correlation ** 2;
	return (correlation * a * b - correlation ** 2 * (a * a + b * b) / 2) / left - Math.log(left) / 2;
}
/**
* Moves each change of the lag from the edge of a window to the second that fits best. Where the lag grows
* by d, the second's clock stood still: d seconds of the primary have no counterpart and are left out, so
* that no sample of the second is used twice.
*/
function sharpen(primary, second, coarse, correlation) {
	const sharp = [];
	for (const { stretch, lag } of coarse) {
		const last = sharp.at(-1);
		if (last === void 0) {
			sharp.push({
				stretch: [stretch[0], stretch[1]],
				lag
			});
			continue;
		}
		const skipped = Math.max(0, lag - last.lag);
		const from = Math.max(last.stretch[0], stretch[0] - settings$3.segmentWindow - skipped);
		const to = Math.min(stretch[1] - skipped, stretch[0] + settings$3.segmentWindow);
		const at = (t, by) => likelihoodOf(primary[t], second[t - by] ?? 0, correlation);
		let gain = 0;
		let best = {
			at: Math.min(from, stretch[1]),
			gain: 0
		};
		for (let t = from; t < to; t++) {
			gain += at(t, last.lag) - at(t + skipped, lag);
			if (gain > best.gain) best = {
				at: t + 1,
				gain
			};
		}
		last.stretch[1] = best.at;
		sharp.push({
			stretch: [Math.min(best.at + skipped, stretch[1]), stretch[1]],
			lag
		});
	}
	return sharp.filter(({ stretch }) => stretch[1] > stretch[0]);
}
function backtrack(from, score) {
	const path = [];
	let state = score.indexOf(Math.max(...score));
	for (let w = from.length - 1; w >= 0; w--) {
		path.unshift(state);
		state = from[w][state];
	}
	return path;
}
function merge(path, candidates, length) {
	const merged = [];
	path.forEach((state, w) => {
		const lag = candidates[state];
		const to = Math.min((w + 1) * settings$3.segmentWindow, length);
		const last = merged.at(-1);
		if (last !== void 0 && last.lag === lag) last.stretch[1] = to;
		else merged.push({
			stretch: [w * settings$3.segmentWindow, to],
			lag
		});
	});
	return merged;
}
// src/types.ts
const channels = [
	"power",
	"cadence",
	"heartRate",
	"speed",
	"altitude",
	"distance",
	"temperature",
	"balance"
];
/** How each second of a series came to be. */
const SecondState = {
	/** At least one record fell into it. */
	recorded: 0,
	/** Between two records of a recorder that writes irregularly; carried over from the last record. */
	bridged: 1,
	/** Inside a pause that the file states, or one that began at a standstill. */
	paused: 2,
	/** No record where there should be one. */
	missing: 3
};
const levels = [
	"none",
	"note",
	"query",
	"refer"
];
// src/align/shift.ts
/**
* Puts the second's samples on the primary's grid by whole seconds: values are moved, never mixed.
* Seconds outside the second recording are NaN and `missing`.
*/
function shift(second, primary, segments) {
	const move = (column) => moved(column, primary.length, segments, NaN, Float64Array);
	const columns = {};
	for (const channel of channels) {
		const column = second.channels[channel];
		if (column !== void 0) columns[channel] = move(column);
	}
	return {
		recording: second.recording,
		start: primary.start,
		length: primary.length,
		channels: columns,
		state: moved(second.state, primary.length, segments, SecondState.missing, Uint8Array),
		extraMeters: second.extraMeters.map(({ name, power }) => ({
			name,
			power: move(power)
		}))
	};
}
function moved(column, length, segments, nothing, Column) {
	const out = new Column(length).fill(nothing);
	for (const { stretch, lag } of segments) {
		const from = Math.max(stretch[0], lag, 0);
		const to = Math.min(stretch[1], column.length + lag, length);
		if (to > from) out.set(column.subarray(from - lag, to - lag), from);
	}
	return out;
}
// src/align/index.ts
/**
* Puts a second recording on the primary's clock by what both measured, whatever their clocks say:
* residuals of power correlated over every lag, judged against a time-reversed second and against the
* next best lag; header times and other channels may only choose between lags that power holds for
* equal. Where that is not secure, the series is still shifted to the likeliest lag (so that a reader
* can look), and `alignment.secure` is false: nothing may be concluded from it.
*
* @param window the race on the primary's series, for the share that both recorded
*/
function align(primary, second, subject, window) {
	const power = primary.channels.power;
	const other = second.channels.power;
	if (power === void 0 || other === void 0) return unaligned(primary, second, subject, "no-power");
	const [own, theirs] = whiten([power, other]);
	const lags$1 = lags(own, theirs);
	if (lags$1 === null) return unaligned(primary, second, subject, "too-short");
	const answers = peaks(lags$1, settings$3.segmentCandidates, 0);
	const clockLag = second.start - primary.start;
	const choice = choose$1({
		answers,
		surrogateGain: lags$1.surrogate.gain,
		clockLag,
		length: primary.length,
		segmentsAmong: (candidates) => segments(own, theirs, candidates, Math.min(.95, Math.max(.05, lags$1.correlation[answers[0].lag - lags$1.first]))),
		gainWithin: (stretch, lag) => gainWithin(own, theirs, stretch[0], stretch[1], lag),
		agreement: (lag) => channelAgreement(primary, second, lag)
	});
	const peak = lags$1.correlation[choice.lag - lags$1.first] ?? 0;
	const found = choice.secure ? delays(power, other, choice.segments) : [];
	const segments$1 = settle(choice.segments, found);
	const series = shift(second, primary, segments$1.map((segment) => ({
		...segment,
		lag: Math.round(segment.lag)
	})));
	const lag = lagOf(found, choice.lag);
	const offset = {
		value: lag.value - clockLag,
		low: lag.low - clockLag,
		high: lag.high - clockLag
	};
	const evidence = choice.secure ? originEvidence(power, series.channels.power) : null;
	const alignment = {
		subject,
		secure: choice.secure,
		reason: choice.reason,
		offset,
		zoneSlip: zoneSlip(offset.value),
		driftPpm: driftOf(found, choice.lag),
		segments: segments$1.map((segment) => ({
			stretch: segment.stretch,
			offset: segment.lag - clockLag
		})),
		peak,
		surrogatePeak: lags$1.surrogate.correlation,
		margin: choice.margin,
		correlation: correlationAt(centred$1(power), centred$1(series.channels.power), 0) ?? 0,
		byChannel: byChannel(primary, series),
		coverage: coverage$1(power, series.channels.power, window),
		originEvidence: evidence,
		origin: originOf(evidence)
	};
	return {
		subject,
		name: second.recording.name,
		series,
		alignment
	};
}
/** A further meter of the primary's own file: one recorder, one clock, nothing to find. */
function alignExtra(primary, meter, subject, window) {
	const { power, ...rest } = primary.channels;
	const series = {
		...primary,
		channels: {
			...rest,
			power: meter.power
		},
		extraMeters: []
	};
	const own = power ?? new Float64Array(primary.length).fill(NaN);
	const evidence = originEvidence(own, meter.power);
	const alignment = {
		...nothingKnown(subject, "same-recorder"),
		secure: power !== void 0,
		offset: {
			value: 0,
			low: 0,
			high: 0
		},
		segments: [{
			stretch: [0, primary.length],
			offset: 0
		}],
		correlation: correlationAt(centred$1(own), centred$1(meter.power), 0) ?? 0,
		byChannel: byChannel(primary, series).filter(({ channel }) => channel === "power"),
		coverage: coverage$1(own, meter.power, window),
		originEvidence: evidence,
		origin: originOf(evidence)
	};
	return {
		subject,
		name: meter.name,
		series,
		alignment
	};
}
function unaligned(primary, second, subject, reason) {
	const series = shift(second, primary, []);
	return {
		subject,
		name: second.recording.name,
		series,
		alignment: nothingKnown(subject, reason)
	};
}
function nothingKnown(subject, reason) {
	return {
		subject,
		secure: false,
		reason,
		offset: null,
		zoneSlip: 0,
		driftPpm: null,
		segments: [],
		peak: 0,
		surrogatePeak: 0,
		margin: 0,
		correlation: 0,
		byChannel: [],
		coverage: 0,
		originEvidence: null,
		origin: "unknown"
	};
}
/** Mean correlation of cadence and heart rate at a lag; null when neither is on both. */
function channelAgreement(primary, second, lag) {
	const found = ["cadence", "heartRate"].flatMap((channel) => {
		const own = primary.channels[channel];
		const other = second.channels[channel];
		if (own === void 0 || other === void 0) return [];
		const correlation = correlationAt(detrend(own), detrend(other), lag);
		return correlation === null ? [] : [correlation];
	});
	if (found.length === 0) return null;
	const seconds = Math.min(primary.length, second.length + lag) - Math.max(0, lag);
	return {
		correlation: Math.max(...found),
		seconds
	};
}
function zoneSlip(offset) {
	const quarters = Math.round(offset / settings$3.zoneSeconds);
	if (quarters === 0) return 0;
	const nearest = quarters * settings$3.zoneSeconds;
	return Math.abs(offset - nearest) <= settings$3.zoneSlackSeconds ? nearest : 0;
}
function centred$1(column) {
	let sum = 0;
	let count = 0;
	for (const value of column) {
		if (Number.isNaN(value)) continue;
		sum += value;
		count++;
	}
	return column.map((value) => value - sum / count);
}
function coverage$1(own, other, [from, to]) {
	let both = 0;
	for (let t = from; t < to; t++) if (!Number.isNaN(own[t]) && !Number.isNaN(other[t])) both++;
	return to > from ? both / (to - from) : 0;
}
// src/declared.ts
/**
* The declaration that goes with a meter: one that bears the name of its file (or field), or its role.
* Roles are "primary", "second", "second 2" …: recordings in the order in which they were handed in,
* then further meters of the primary's own file.
*/
function declaredFor(devices, ownName, role) {
	return devices?.find(({ name }) => name === ownName) ?? devices?.find(({ name }) => name === role) ?? null;
}
/** The role of the pair at a position of `all.seconds`. */
function secondRole(position) {
	return position === 0 ? "second" : `second ${position + 1}`;
}
/** The declarations of the two meters of a pair. */
function declaredPair({ rider, primary, seconds }, subject) {
	const position = seconds.findIndex((second) => second.subject === subject);
	return {
		own: declaredFor(rider.devices, primary.recording.name, "primary"),
		other: declaredFor(rider.devices, seconds[position].name, secondRole(position))
	};
}
/**
* The rider's facts without declarations by position: where a recording could not be read, nobody knows
* any more which of the others was meant, and a claim must not tighten the limits of the wrong meter.
*/
function withoutPlaces(rider) {
	const devices = rider.devices?.filter(({ name }) => !/^second( \d+)?$/.test(name));
	return devices === void 0 ? rider : {
		...rider,
		devices
	};
}
// src/tool.ts
/** Name and version as reports state them; a test holds the version to package.json. */
const tool = {
	name: "wattassay",
	version: "0.1.0"
};
// src/units.ts
/**
* How many decimals a value of each unit carries. Measurements are rounded to these before they are
* judged, and printed with the same: the value judged is the value printed.
*/
const decimals = {
	"%": 1,
	W: 1,
	"W/kg": 2,
	rpm: 1,
	bpm: 1,
	N·m: 1,
	kJ: 1,
	kg: 1,
	s: 1,
	min: 1,
	count: 0,
	share: 3,
	ratio: 3,
	r: 3
};
/** Rounds half away from zero to the unit's decimals; never returns -0. */
function roundTo(value, unit) {
	const scale = 10 ** decimals[unit];
	const rounded = Math.sign(value) * Math.round(Math.abs(value) * scale) / scale;
	return rounded === 0 ? 0 : rounded;
}
/** Rounds to so many significant figures; what is not finite stays as it is. */
function toFigures(value, figures) {
	return Number.isFinite(value) ? Number(value.toPrecision(figures)) : value;
}
// src/assemble.ts
/** The report object: everything that any form of the report is made from. */
function assemble$1(parts) {
	const { all, rules } = parts;
	const handedIn = all.seconds.filter(({ series }) => series.recording !== all.primary.recording);
	return {
		schemaVersion: 1,
		tool,
		inputs: [
			{
				role: "primary",
				name: all.primary.recording.name,
				sha256: all.primary.recording.sha256
			},
			...handedIn.map(({ series: { recording } }) => ({
				role: "second",
				name: recording.name,
				sha256: recording.sha256
			})),
			...parts.otherInputs
		],
		settings: {
			rider: all.rider,
			race: all.race,
			redacted: false
		},
		rules: {
			name: rules.name,
			sha256: rules.sha256,
			overlaid: rules.overlaid,
			items: rules.rules
		},
		submission: {
			primary: describe$5(all.primary, "primary", "primary", declaredFor(all.rider.devices, all.primary.recording.name, "primary")),
			seconds: all.seconds.map((second, i) => describe$5(second.series, second.subject, "second", declaredFor(all.rider.devices, second.name, secondRole(i)))),
			unreadable: parts.unreadable,
			window: {
				stretch: all.window,
				given: parts.windowGiven
			},
			history: describeHistory(all)
		},
		grade: parts.grade,
		reach: parts.reach,
		missing: parts.missing,
		findings: parts.findings,
		measurements: parts.measurements.map(summarise),
		sections: parts.sections,
		alignment: all.seconds.map(({ alignment }) => rounded(alignment)),
		steps: parts.steps,
		charts: [traces$1(all), ...chartsOf(parts.measurements)].map(rounded)
	};
}
function describe$5(series, subject, role, declared) {
	const { recording, state } = series;
	const watts = (series.channels.power ?? /* @__PURE__ */ new Float64Array()).filter((value) => !Number.isNaN(value));
	const first = state.indexOf(SecondState.recorded);
	return {
		subject,
		role,
		name: recording.name,
		sha256: recording.sha256,
		format: recording.format,
		device: recording.device,
		declared,
		sport: recording.sport,
		indoors: recording.indoors,
		start: series.start + Math.max(0, first),
		seconds: state.lastIndexOf(SecondState.recorded) + 1 - Math.max(0, first),
		recordedSeconds: state.reduce((sum, s) => sum + (s === SecondState.recorded ? 1 : 0), 0),
		meanPower: watts.length === 0 ? null : toFigures(watts.reduce((a, b) => a + b, 0) / watts.length, 5),
		maxPower: watts.length === 0 ? null : watts.reduce((a, b) => Math.max(a, b), 0),
		channels: channels.filter((channel) => series.channels[channel] !== void 0),
		defects: recording.defects
	};
}
function describeHistory({ history }) {
	if (history === null) return null;
	const leftOut = {};
	for (const { why } of history.profile.leftOut) leftOut[why] = (leftOut[why] ?? 0) + 1;
	return {
		rides: history.rides.length,
		notBefore: history.notBefore,
		leftOut
	};
}
function summarise({ measure, rule, subject, options, outcome }) {
	const known = {
		measure,
		rule,
		subject,
		state: outcome.state,
		options
	};
	const nothing = {
		value: null,
		unit: null,
		interval: null,
		count: null
	};
	switch (outcome.state) {
		case "measured": {
			const { value, unit, interval, count } = outcome;
			return {
				...known,
				value,
				unit,
				interval,
				count,
				reason: null
			};
		}
		case "not applicable": return {
			...known,
			...nothing,
			reason: {
				id: outcome.reason,
				values: outcome.values
			}
		};
		case "failed": return {
			...known,
			...nothing,
			reason: {
				id: "failed",
				values: { message: outcome.message }
			}
		};
	}
}
function chartsOf(measurements) {
	const charts = measurements.flatMap(({ outcome }) => outcome.state === "measured" ? outcome.charts : []);
	return [...new Map(charts.map((chart) => [chart.id, chart])).values()];
}
function traces$1({ primary, seconds }) {
	const own = (channel) => primary.channels[channel];
	return {
		kind: "traces",
		id: "traces",
		start: primary.start,
		primary: readings$2(own("power")) ?? [],
		seconds: seconds.map(({ subject, series }) => ({
			subject,
			power: readings$2(series.channels.power) ?? []
		})),
		cadence: readings$2(own("cadence")),
		heartRate: readings$2(own("heartRate"))
	};
}
function readings$2(column) {
	return column === void 0 ? null : Array.from(column, (value) => Number.isNaN(value) ? null : value);
}
/** Every number to six figures, so that the last bit of a logarithm never shows in the report's bytes. */
function rounded(data) {
	if (typeof data === "number") return Number.isInteger(data) ? data : toFigures(data, 6);
	if (data === null || typeof data !== "object") return data;
	if (Array.isArray(data)) return data.every(needsNone) ? data : data.map(rounded);
	return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, rounded(value)]));
}
const needsNone = (value) => value === null || Number.isInteger(value);
// src/history/before.ts
/**
* The part of a profile that may speak about a race: rides that ended before it began. A ride that
* overlaps the race may be the race itself, one that follows it may have been ridden to explain it:
* both are left out and counted.
*
* @param raceFrom clock time of the race's first second
* @param raceTo clock time at which it ends
*/
function historyFor(profile, raceFrom, raceTo) {
	const before = (ride) => ride.to < raceFrom;
	const rides = profile.rides.filter(before);
	const overlapping = profile.rides.filter((ride) => !before(ride) && ride.from < raceTo).length;
	return {
		profile,
		rides,
		notBefore: profile.rides.length - rides.length,
		overlapping
	};
}
// src/judge/grade.ts
/**
* The grade of a submission: `refer` if any finding is, else `query`, else `incomplete`, else `clear`.
* Several queries add up only where the rules say so, and only across families: findings of one family
* share their evidence, so ten of them are no better than one.
*/
function gradeOf$1(findings, { rules, grades }, lacks) {
	const byId = new Map(rules.map((rule) => [rule.id, rule]));
	if (findings.some((finding) => finding.level === "refer")) return "refer";
	const queries = findings.filter((finding) => finding.level === "query");
	if (addUp(queries, byId, grades)) return "refer";
	if (queries.length > 0) return "query";
	return lacks.missing.length > 0 || lacks.unreadable > 0 || findings.some((finding) => finding.level !== "none" && byId.get(finding.rule)?.highest === "incomplete") ? "incomplete" : "clear";
}
function addUp(queries, byId, grades) {
	if (grades.queriesThatRefer === null) return false;
	return new Set(queries.map((finding) => byId.get(finding.rule)?.family)).size >= grades.queriesThatRefer;
}
/** How far a grade reaches: how many checks could be made, how many not, and why not. */
function reachOf(measurements) {
	const count = (state) => measurements.filter((measurement) => measurement.outcome.state === state).length;
	const reasons = /* @__PURE__ */ new Map();
	for (const { outcome } of measurements) {
		if (outcome.state === "measured") continue;
		const id = outcome.state === "failed" ? "failed" : outcome.reason;
		reasons.set(id, (reasons.get(id) ?? 0) + 1);
	}
	return {
		judged: count("measured"),
		notApplicable: count("not applicable"),
		failed: count("failed"),
		because: [...reasons].map(([id, count]) => ({
			id,
			count
		})).sort((a, b) => b.count - a.count || (a.id < b.id ? -1 : 1))
	};
}
// src/judge/explain.ts
/**
* Marks findings that another finding about the same subject accounts for, so that one fault is not told
* five times: a rule names what it explains, and does so only where it reaches at least the same level.
* Levels and grade stay as they are.
*/
function explain(findings, rules) {
	const weight = ({ level }) => levels.indexOf(level);
	return findings.map((finding) => {
		const leading = findings.find((other) => other.subject === finding.subject && weight(finding) > 0 && weight(other) >= weight(finding) && rules.get(other.rule)?.explains?.includes(finding.rule) === true);
		return leading === void 0 ? finding : {
			...finding,
			explainedBy: leading.rule
		};
	});
}
// src/judge/limit.ts
/** The levels that a limit can make, the lightest first. */
const raisedLevels = levels.filter((level) => level !== "none");
/**
* A limit in the unit of the value. A number of the rule file that is "of value" stands as written; a
* multiple of an honest spread is rounded like the value that it is compared with. Null when the
* measurement states no honest range: then it cannot be compared, which is not the same as passing.
*/
function effectiveLimit(limit, measured) {
	const { "at least": atLeast = null, "at most": atMost = null, of, end } = limit;
	if (of === "value") return {
		atLeast,
		atMost,
		end
	};
	if (measured.expected === void 0) return null;
	const { centre, spread } = measured.expected[of === "declared spread" ? "declared" : "field"];
	const place = (multiple) => {
		if (multiple === null) return null;
		const limitInUnit = centre + multiple * spread;
		return measured.unit === void 0 ? limitInUnit : roundTo(limitInUnit, measured.unit);
	};
	return {
		atLeast: place(atLeast),
		atMost: place(atMost),
		end
	};
}
/** On which side a measurement is beyond a limit; null when it is within. */
function sideBeyond(limit, { value, interval }) {
	const [low, high] = limit.end === "cautious" ? interval : [value, value];
	if (limit.atLeast !== null && low >= limit.atLeast) return "above";
	if (limit.atMost !== null && high <= limit.atMost) return "below";
	return null;
}
/** Whether every limit of a rule can be compared with this measurement. */
function canCompare(rule, measured) {
	return measured.expected !== void 0 || Object.values(rule.limits).every((limit) => limit.of === "value");
}
// src/judge/round.ts
/** Figures kept of a bare number in the details, which has no unit to say how many decimals it carries. */
const figures = 6;
/**
* Rounds a measurement to what is printed of it. This happens once, before judging, so that the value
* judged is the value printed, and the same bytes come out whatever the last bit of a logarithm was.
*/
function roundMeasurement(measurement) {
	return {
		...measurement,
		outcome: roundOutcome(measurement.outcome)
	};
}
function roundOutcome(outcome) {
	return outcome.state === "measured" ? roundMeasured(outcome) : outcome;
}
function roundMeasured(measured) {
	const { unit, interval, expected, chance } = measured;
	return {
		...measured,
		value: roundTo(measured.value, unit),
		interval: [roundTo(interval[0], unit), roundTo(interval[1], unit)],
		...expected === void 0 ? {} : { expected: {
			declared: roundRange(expected.declared, unit),
			field: roundRange(expected.field, unit)
		} },
		...chance === void 0 ? {} : { chance: toFigures(chance, 2) },
		details: Object.fromEntries(Object.entries(measured.details).map(([name, value]) => [name, roundValue(value)]))
	};
}
function roundRange(range, unit) {
	return {
		centre: roundTo(range.centre, unit),
		spread: roundTo(range.spread, unit)
	};
}
function roundValue(value) {
	if (typeof value === "string") return value;
	if (typeof value === "number") return toFigures(value, figures);
	return roundQuantity(value);
}
function roundQuantity({ value, unit }) {
	return {
		value: roundTo(value, unit),
		unit
	};
}
// src/judge/judge.ts
/**
* Compares each measurement with the limits of its rule. What is not applicable or failed makes no
* finding, and so can never be read as a pass; neither does a rule that is switched off.
*/
function judge(measurements, { rules }) {
	const byId = new Map(rules.map((rule) => [rule.id, rule]));
	const judged = [];
	const findings = [];
	for (const raw of measurements) {
		const rule = byId.get(raw.rule);
		if (rule === void 0) throw new Error(`a measurement names a rule that is not in the set: ${raw.rule}`);
		const measurement = comparable(rule, roundMeasurement(raw));
		judged.push(measurement);
		if (measurement.outcome.state === "measured" && rule.off === void 0) findings.push(findingOf$1(rule, measurement, measurement.outcome));
	}
	return {
		measurements: judged,
		findings: explain(findings, byId)
	};
}
/** A rule in multiples of the honest spread over a measure that states none is a failure, never a pass. */
function comparable(rule, measurement) {
	const { outcome } = measurement;
	if (outcome.state !== "measured" || canCompare(rule, outcome)) return measurement;
	const message = `the limits of ${rule.id} are multiples of the honest spread, but ${rule.measure} states none`;
	return {
		...measurement,
		outcome: {
			state: "failed",
			message
		}
	};
}
function findingOf$1(rule, { subject, remarks }, measured) {
	const verdict = verdictOf(rule, measured);
	return {
		rule: rule.id,
		subject,
		level: verdict.level,
		value: measured.value,
		unit: measured.unit,
		interval: measured.interval,
		count: measured.count,
		limits: verdict.limits,
		expected: measured.expected ?? null,
		ceiling: verdict.ceiling,
		remarks,
		explainedBy: null,
		stretches: measured.stretches,
		summary: {
			id: verdict.side ?? "fine",
			values: valuesOf(measured, verdict)
		},
		chance: measured.chance ?? null,
		charts: measured.charts.map((chart) => chart.id)
	};
}
/** What the claim may fill in. The measure's own details give way to the four fixed names. */
function valuesOf(measured, verdict) {
	const quantity = (value) => ({
		value,
		unit: measured.unit
	});
	return {
		...measured.details,
		value: quantity(measured.value),
		low: quantity(measured.interval[0]),
		high: quantity(measured.interval[1]),
		...verdict.limit === null ? {} : { limit: quantity(verdict.limit) }
	};
}
/** The level that a rule gives a measurement: the highest whose limit is passed, held down by ceilings. */
function verdictOf(rule, measured) {
	const limits = {};
	let reached = "none";
	let side = null;
	for (const level of raisedLevels) {
		const limit = rule.limits[level];
		const effective = limit === void 0 ? null : effectiveLimit(limit, measured);
		if (effective === null) continue;
		limits[level] = effective;
		const beyond = sideBeyond(effective, measured);
		if (beyond === null) continue;
		reached = level;
		side = beyond;
	}
	const present = new Set(measured.circumstances ?? []);
	const lowest = rule.ceilings.filter((ceiling) => present.has(ceiling.when)).sort((a, b) => rank(a.level) - rank(b.level))[0];
	const held = lowest !== void 0 && rank(lowest.level) < rank(reached);
	return {
		level: held ? lowest.level : reached,
		side,
		limit: numberSaid(limits, reached, side, measured),
		limits,
		ceiling: held ? lowest.why : null
	};
}
/** A level's place among the levels: 0 for none. */
function rank(level) {
	return levels.indexOf(level);
}
function numberSaid(limits, reached, side, { value }) {
	if (reached !== "none") {
		const passed = limits[reached];
		return (side === "above" ? passed?.atLeast : passed?.atMost) ?? null;
	}
	return Object.values(limits).flatMap((limit) => [limit.atLeast, limit.atMost]).filter((number) => number !== null).sort((a, b) => Math.abs(a - value) - Math.abs(b - value))[0] ?? null;
}
// src/judge/requirements.ts
/** Which of an event's requirements a submission does not meet, each once, in the order given. */
function missingOf(required, holdings) {
	const meets = {
		power: holdings.channels.includes("power"),
		cadence: holdings.channels.includes("cadence"),
		heartRate: holdings.channels.includes("heartRate"),
		"second recording": holdings.independentSeconds > 0,
		history: holdings.rides > 0
	};
	return [...new Set(required)].filter((requirement) => !meets[requirement]);
}
// src/measure/measure.ts
/** One number in the rule file: say what it is, with its unit. */
const number$3 = (what) => ({
	what,
	list: false
});
/** A list of numbers in the rule file. */
const numbers = (what) => ({
	what,
	list: true
});
/** Defines a measure; `compute` receives the options typed as they are declared. */
function defineMeasure(measure) {
	return {
		circumstances: {},
		...measure
	};
}
/** The one way to say "cannot be computed": never NaN, never a pass. */
function notApplicable(reason, values = {}) {
	return {
		state: "not applicable",
		reason,
		values
	};
}
/**
* The one way to return a value. Throws when it is not finite: a NaN that reached this point is a bug
* of the measure, and the audit reports it as failed.
*/
function measured(value, unit, interval, count, extras = {}) {
	if (![
		value,
		...interval,
		count
	].every(Number.isFinite)) throw new Error(`not a finite measurement: ${value} [${interval.join(", ")}] of ${count}`);
	return {
		state: "measured",
		stretches: [],
		circumstances: [],
		details: {},
		charts: [],
		...extras,
		value,
		unit,
		interval,
		count
	};
}
/** An exact count or length: its interval is itself. */
function exact(value, unit, count, extras = {}) {
	return measured(value, unit, [value, value], count, extras);
}
// src/measure/pair/gate.ts
/** What every comparison of two meters stands on: one clock, and two measurements. */
function gate({ alignment }) {
	if (!alignment.secure) return notApplicable("not-secure");
	if (alignment.origin === "same sensor") return notApplicable("not-independent");
	return null;
}
// src/measure/averaging-difference.ts
/**
* How many more seconds one meter averages than the other: the length of the moving mean that makes the
* crisper trace most like the smoother one, at the lag that suits it best; and that lag, which holds the
* clock, the link and the averaging together and cannot be split from power alone.
*/
const averagingDifference = defineMeasure({
	id: "averaging-difference",
	of: "pair",
	options: {
		longestSeconds: number$3("longest moving mean tried, s"),
		lagSeconds: number$3("lags tried either side, s"),
		leastSeconds: number$3("fewest seconds compared")
	},
	compute(all, pair, { longestSeconds, lagSeconds, leastSeconds }) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const own = all.primary.channels.power;
		const other = pair.series.channels.power;
		if (all.window[1] - all.window[0] < leastSeconds) return notApplicable("too-short", {
			seconds: all.window[1] - all.window[0],
			needed: leastSeconds
		});
		const ratio = roughness(own, all.window) / roughness(other, all.window);
		const ownSmoother = ratio < 1;
		const [crisp, smooth] = ownSmoother ? [other, own] : [own, other];
		const most = Math.max(ratio, 1 / ratio) < sameRoughness ? 1 : longestSeconds;
		let best = {
			seconds: 1,
			lag: 0,
			correlation: -1
		};
		for (let seconds = 1; seconds <= most; seconds++) {
			const averaged = trailingMean(crisp, seconds);
			for (let lag = -lagSeconds; lag <= lagSeconds; lag++) {
				const correlation = stepCorrelation(smooth, averaged, lag, all.window);
				if (correlation > best.correlation) best = {
					seconds,
					lag,
					correlation
				};
			}
		}
		return exact(best.seconds, "s", all.window[1] - all.window[0], {
			stretches: [all.window],
			details: {
				smoother: ownSmoother ? "primary" : "second",
				lag: {
					value: best.lag,
					unit: "s"
				},
				correlation: {
					value: best.correlation,
					unit: "r"
				}
			}
		});
	}
});
/** A moving mean of two seconds lowers the mean square step of a crisp trace by more than this factor. */
const sameRoughness = 2;
/** Mean square of second-to-second steps. */
function roughness(column, [from, to]) {
	let squares = 0;
	let count = 0;
	for (let t = from + 1; t < to; t++) {
		const step = column[t] - column[t - 1];
		if (Number.isNaN(step)) continue;
		squares += step * step;
		count++;
	}
	return squares / count;
}
/** Mean of each second and those before it; NaN where one of them is missing. */
function trailingMean(column, seconds) {
	if (seconds === 1) return column;
	let sum = 0;
	let gaps = 0;
	return column.map((value, t) => {
		sum += Number.isNaN(value) ? 0 : value;
		gaps += Number.isNaN(value) ? 1 : 0;
		if (t >= seconds) {
			const left = column[t - seconds];
			sum -= Number.isNaN(left) ? 0 : left;
			gaps -= Number.isNaN(left) ? 1 : 0;
		}
		return t + 1 < seconds || gaps > 0 ? NaN : sum / seconds;
	});
}
/** Correlation of second-to-second steps: where averaging shows. */
function stepCorrelation(a, b, lag, [from, to]) {
	let products = 0;
	let squares = 0;
	let otherSquares = 0;
	for (let t = Math.max(from + 1, lag + 1); t < Math.min(to, b.length + lag); t++) {
		const x = a[t] - a[t - 1];
		const y = b[t - lag] - b[t - lag - 1];
		if (Number.isNaN(x) || Number.isNaN(y)) continue;
		products += x * y;
		squares += x * x;
		otherSquares += y * y;
	}
	return squares > 0 && otherSquares > 0 ? products / Math.sqrt(squares * otherSquares) : -1;
}
// src/math/averaging.ts
/**
* What averaging does to the wander of a series like 1/f noise, as power on a crisp meter is up to half a
* minute: means over 1, 4 and 30 s scatter alike (published of self-paced riding: a 1/f-like spectrum,
* Tucker et al. 2006, BJSM 40:912–917).
*
* Ratio of the differences of neighbouring means over `span` and over twice that (the Allan deviation), when
* readings are averaged: the square root of ∫ (1/f)·|H(f)|²·sin⁴(πf·span)/(πf·span)² df at the one span over
* the same at the other; H = sinc(f·seconds), or 1/(1 + iπf·seconds) after a mean over the one second that
* every reading is. `seconds` is twice the mean age of a reading in both.
*/
function wanderRatio(seconds, span, averaging) {
	return Math.sqrt(wander(seconds, span, averaging) / wander(seconds, 2 * span, averaging));
}
function wander(seconds, span, averaging) {
	let sum = 0;
	for (let f = 1e-4; f < 4; f *= 1.06) {
		const blur = averaging === "plain" ? sinc(f * seconds) ** 2 : sinc(f) ** 2 / (1 + (Math.PI * f * Math.max(0, seconds - 1)) ** 2);
		const angle = Math.PI * f * span;
		const turn = Math.sin(angle) ** 2 / angle;
		sum += blur * turn * turn;
	}
	return sum;
}
function sinc(x) {
	return Math.sin(Math.PI * x) / (Math.PI * x);
}
const knots = [
	1,
	1.5,
	2,
	2.5,
	3,
	4,
	5,
	6,
	7,
	8,
	10,
	12,
	14,
	17,
	20,
	25,
	30,
	37,
	45
];
/** Steps of the logarithm of seconds on which a fit is looked for. */
const fine = 120;
const curves = /* @__PURE__ */ new Map();
/** Seconds of averaging that explain these ratios best, by least squares, with their 95 % interval. */
function fitAveraging(ratios, averaging) {
	const misfits = /* @__PURE__ */ new Float64Array(121);
	for (const { span, ratio, error } of ratios) {
		const curve = curveOf$1(span, averaging);
		for (let k = 0; k <= fine; k++) misfits[k] += ((ratio - curve[k]) / error) ** 2;
	}
	let best = 0;
	for (let k = 1; k <= fine; k++) if (misfits[k] < misfits[best]) best = k;
	const misfit = misfits[best];
	const allowed = misfit + 3.84 * Math.max(1, misfit / Math.max(1, ratios.length - 1));
	let low = best;
	let high = best;
	while (low > 0 && misfits[low - 1] <= allowed) low--;
	while (high < fine && misfits[high + 1] <= allowed) high++;
	return {
		seconds: secondsAt(best),
		low: secondsAt(low),
		high: secondsAt(high),
		misfit
	};
}
function secondsAt(step) {
	return knots[knots.length - 1] ** (step / fine);
}
/** `wanderRatio` over the fine steps, straight between the knots. */
function curveOf$1(span, averaging) {
	const key = `${averaging} ${span}`;
	const known = curves.get(key);
	if (known !== void 0) return known;
	const atKnots = knots.map((seconds) => wanderRatio(seconds, span, averaging));
	const curve = /* @__PURE__ */ new Float64Array(121);
	for (let k = 0, knot = 1; k <= fine; k++) {
		const seconds = secondsAt(k);
		while (knot < knots.length - 1 && knots[knot] < seconds) knot++;
		const part = Math.log(seconds / knots[knot - 1]) / Math.log(knots[knot] / knots[knot - 1]);
		curve[k] = atKnots[knot - 1] + (atKnots[knot] - atKnots[knot - 1]) * part;
	}
	curves.set(key, curve);
	return curve;
}
// src/math/jackknife.ts
/**
* Standard error of an estimate, from the estimates that leave out one block of the data at a time (Tukey's
* jackknife). Blocks of neighbouring seconds keep what makes seconds alike inside them.
*
* @param without one estimate for each block left out, at least 2
*/
function jackknifeError(without) {
	const blocks = without.length;
	const mean = without.reduce((a, b) => a + b, 0) / blocks;
	const squares = without.reduce((sum, one) => sum + (one - mean) ** 2, 0);
	return Math.sqrt((blocks - 1) / blocks * squares);
}
/** Half of the 95 % interval: t with one degree of freedom less than there are blocks. */
function jackknifeReach(without) {
	return studentQuantile(.975, without.length - 1) * jackknifeError(without);
}
// src/math/steady-windows.ts
/**
* Marks every sample that lies in some window of `window` samples whose standard deviation (about the
* window's own mean, n - 1) is at most `most`. A NaN in a window rules it out. Linear, by running sums
* about the value that opens each run of valid samples.
*/
function inSteadyWindow(values, window, most) {
	const marked = new Uint8Array(values.length);
	const allowed = most * most * (window - 1);
	let origin = 0;
	let sum = 0;
	let squares = 0;
	let inside = 0;
	let markedTo = 0;
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		if (Number.isNaN(value)) {
			inside = 0;
			continue;
		}
		if (inside === 0) {
			origin = value;
			sum = 0;
			squares = 0;
		}
		const here = value - origin;
		sum += here;
		squares += here * here;
		inside++;
		if (inside > window) {
			const gone = values[i - window] - origin;
			sum -= gone;
			squares -= gone * gone;
		}
		if (inside < window) continue;
		if (squares - sum * sum / window > allowed + 1e-9 * squares) continue;
		marked.fill(1, Math.max(i - window + 1, markedTo), i + 1);
		markedTo = i + 1;
	}
	return marked;
}
// src/measure/recording/close-ups.ts
/** How many stretches are shown from nearby, and how many seconds around and of each. */
const shown$3 = {
	most: 6,
	around: 15,
	longest: 180
};
/** Close-ups of the longest of these stretches, in order of time. */
function closeUps$1(id, series, stretches) {
	const chosen = [...stretches].sort((a, b) => b[1] - b[0] - (a[1] - a[0]) || a[0] - b[0]).slice(0, shown$3.most).sort((a, b) => a[0] - b[0]);
	const { power, cadence, heartRate } = series.channels;
	return {
		kind: "close-ups",
		id,
		closeUps: chosen.map((marked) => {
			const from = Math.max(0, marked[0] - shown$3.around);
			const to = Math.min(series.length, Math.min(marked[1], marked[0] + shown$3.longest) + shown$3.around);
			return {
				from,
				power: readings$1(power, from, to) ?? [],
				cadence: readings$1(cadence, from, to),
				heartRate: readings$1(heartRate, from, to),
				marked
			};
		})
	};
}
function readings$1(column, from, to) {
	if (column === void 0) return null;
	return Array.from(column.subarray(from, to), (value) => Number.isFinite(value) ? Math.round(value * 10) / 10 : null);
}
// src/measure/recording/records.ts
const kept$3 = /* @__PURE__ */ new WeakMap();
/** Records of a series that holds power, worked out once; null where it holds none. */
function recordsOf(series) {
	const { power } = series.channels;
	if (power === void 0) return null;
	const known = kept$3.get(series) ?? collect$1(series, power);
	kept$3.set(series, known);
	return known;
}
/** How many seconds record `i` stands for. */
function secondsOf({ at, broken }, i) {
	return i + 1 < at.length && broken[i + 1] === 0 ? at[i + 1] - at[i] : 1;
}
function collect$1({ state, length }, column) {
	const at = new Int32Array(length);
	const power = new Float64Array(length);
	const broken = new Uint8Array(length);
	let count = 0;
	let breaks = 1;
	for (let i = 0; i < length; i++) {
		if (state[i] === SecondState.bridged) continue;
		if (state[i] !== SecondState.recorded) {
			breaks = 1;
			continue;
		}
		at[count] = i;
		power[count] = column[i];
		broken[count] = breaks;
		breaks = 0;
		count++;
	}
	return {
		at: at.subarray(0, count),
		power: power.subarray(0, count),
		broken: broken.subarray(0, count)
	};
}
// src/measure/recording/subject.ts
/** The name of a recording among the subjects; charts need it, since their ids are unique in a report. */
function subjectOf(all, series) {
	return all.seconds.find((one) => one.series === series)?.subject.replace("pair:", "second:") ?? "primary";
}
// src/measure/recording/wander.ts
/** Differences wider than this (W times seconds) are counted together: they lie far above any median. */
const countedApart = 4095;
/** Blocks of the ride that can be left out. */
const blocks$2 = 10;
/**
* Robust Allan deviation: the median size of the differences of neighbouring means over `span` seconds, over
* every pair of full windows, as the standard deviation of a normal; what rounding to whole watts adds is
* taken off.
*
* @param power W, one value a second, NaN where missing
* @param widest differences wider than this (W) are steps of the ride and not its wander: left out
*/
function deviation(power, span, widest = Number.POSITIVE_INFINITY) {
	const sizes = differences$1(power, span).filter((size) => size <= widest * span);
	const counts = /* @__PURE__ */ new Int32Array(4096);
	for (let i = 0; i < sizes.length; i++) counts[sizes[i]]++;
	const spread = (pairs) => {
		const robust = median(counts, pairs) / .6745 / span;
		return Math.sqrt(Math.max(0, robust * robust - 1 / (6 * span)));
	};
	const without = Array.from({ length: blocks$2 }, (_, block) => {
		const from = Math.floor(block * sizes.length / blocks$2);
		const to = Math.floor((block + 1) * sizes.length / blocks$2);
		for (let i = from; i < to; i++) counts[sizes[i]]--;
		const result = spread(sizes.length - (to - from));
		for (let i = from; i < to; i++) counts[sizes[i]]++;
		return result;
	});
	return {
		whole: spread(sizes.length),
		without,
		pairs: sizes.length
	};
}
/** Sizes of the differences of neighbouring sums over `span` seconds, rounded. */
function differences$1(power, span) {
	const sizes = new Uint16Array(Math.max(0, power.length - 2 * span + 1));
	let count = 0;
	let earlier = 0;
	let later = 0;
	let valid = 0;
	for (let i = 0; i < power.length; i++) {
		const watts = power[i];
		if (Number.isNaN(watts)) {
			earlier = 0;
			later = 0;
			valid = 0;
			continue;
		}
		later += watts;
		valid++;
		if (valid > span) {
			later -= power[i - span];
			earlier += power[i - span];
		}
		if (valid > 2 * span) earlier -= power[i - 2 * span];
		if (valid >= 2 * span) sizes[count++] = Math.min(countedApart, Math.round(Math.abs(later - earlier)));
	}
	return sizes.subarray(0, count);
}
/** Median of whole numbers from how often each occurs, straight within the middle one. */
function median(counts, total) {
	let below = 0;
	for (let size = 0; size < counts.length; size++) {
		const here = counts[size];
		if (here > 0 && 2 * (below + here) >= total) {
			const part = (total / 2 - below) / here;
			return size === 0 ? part / 2 : size - .5 + part;
		}
		below += here;
	}
	return 0;
}
// src/measure/averaging-seconds.ts
/**
* Seconds over which power was averaged. Without averaging, means of power over a few seconds scatter as
* widely as means over twice as long; averaging takes the short scatter away, and the shortfall tells its
* length. Steps of the ride are left out. A plain mean over k seconds shows itself besides: it undoes each change k seconds
* later, so that second differences correlate by about -0.5 at that lag. The interval leaves out tenths of
* the ride one at a time.
*/
const averagingSeconds = defineMeasure({
	id: "averaging-seconds",
	of: "recording",
	options: {
		spans: numbers("spans of the shorter means, each twice the one before, s"),
		stepFactor: number$3("a difference this many times as wide as the scatter over half its span is a step of the ride"),
		modelError: number$3("scatter of the ratio of two spans among crisp recordings, beside sampling"),
		halvesFrom: number$3("averaging that the whole must allow for its halves to be looked at, s"),
		halfFactor: number$3("how many times as much averaging one half must show to stand for the ride"),
		longestSeconds: number$3("longest plain mean looked for, s"),
		dip: number$3("correlation of second differences from which a plain mean is recognised"),
		dipAgreement: number$3("factor by which the scatter may tell other seconds than the dip"),
		scatterTells: number$3("seconds beyond which the scatter cannot tell lengths of averaging apart"),
		plainFrom: number$3("averaging from which a plain mean is looked for, s"),
		clip: number$3("changes are clipped at this many of their robust standard deviations"),
		minimumWatts: number$3("power from which seconds count, W"),
		steadySeconds: number$3("length of a window that may stand still, s"),
		steadyWatts: number$3("standard deviation up to which it does and is left out, W"),
		minimumSeconds: number$3("seconds that follow one another below which nothing is said")
	},
	compute(all, recording, options) {
		const records = recordsOf(recording);
		if (records === null) return notApplicable("no-channel", { channel: "power" });
		const power = usable(records, options);
		const whole = estimate(power, options);
		if (whole === null) {
			const pedalled = records.power.filter((watts) => watts >= options.minimumWatts).length;
			const following = power.reduce((sum, watts) => Number.isNaN(watts) ? sum : sum + 1, 0);
			return pedalled >= 2 * options.minimumSeconds ? notApplicable("irregular-recorder", { share: 1 - following / pedalled }) : notApplicable("too-short", {
				seconds: following,
				needed: options.minimumSeconds
			});
		}
		const { stretch, found } = mostAveraged(power, whole, options);
		return measured(found.seconds, "s", [found.low, found.high], found.count, {
			stretches: found.correlation === null ? [] : [stretch],
			details: {
				averaging: found.averaging,
				part: stretch[1] - stretch[0] === power.length ? "throughout" : "in one half of the ride"
			},
			charts: found.correlation === null ? [] : [chart$6(`averaging:${subjectOf(all, recording)}`, power, stretch, found.correlation, found.seconds)]
		});
	}
});
/**
* Smoothing may be switched on or off in mid-ride: where the whole leaves room for more averaging, the half
* that shows clearly more of it is believed.
*/
function mostAveraged(power, whole, options) {
	const middle = power.length >> 1;
	const all = {
		stretch: [0, power.length],
		found: whole
	};
	if (whole.high < options.halvesFrom) return all;
	return [[0, middle], [middle, power.length]].reduce((best, stretch) => {
		const found = estimate(power.subarray(...stretch), options);
		return found !== null && found.low > options.halfFactor * best.found.low ? {
			stretch,
			found
		} : best;
	}, all);
}
/** Null where too few seconds follow one another. */
function estimate(power, options) {
	const scatter = scatterOf$1(power, options);
	if (scatter.pairs < options.minimumSeconds) return null;
	const plain = fitAveraging(scatter.ratios, "plain");
	const told = {
		count: scatter.pairs,
		averaging: "weighted mean"
	};
	if (plain.seconds < options.plainFrom) return {
		...plain,
		...told,
		correlation: null
	};
	const correlation = bendCorrelation(power, options);
	const dip = lagOfDip(correlation, options.dip);
	if (dip === null) return {
		...fitAveraging(scatter.ratios, "weighted"),
		...told,
		correlation
	};
	if (!(Math.min(plain.low, options.scatterTells) <= dip * options.dipAgreement && plain.high >= dip / options.dipAgreement)) return {
		...plain,
		...told,
		correlation
	};
	return {
		seconds: dip,
		low: dip - .5,
		high: dip + .5,
		...told,
		averaging: "plain mean",
		correlation
	};
}
/**
* Power on a grid of seconds: NaN where there is no record, no pedalling, or nothing moves. Two records of
* one run that are a second apart stay neighbours.
*/
function usable({ at, power }, options) {
	const steady = inSteadyWindow(power, options.steadySeconds, options.steadyWatts);
	const length = at.length === 0 ? 0 : at[at.length - 1] + 1;
	const seconds = new Float64Array(length).fill(NaN);
	for (let i = 0; i < power.length; i++) if (power[i] >= options.minimumWatts && steady[i] === 0) seconds[at[i]] = power[i];
	return seconds;
}
/** Scatter of means over each span in terms of twice the span; errors leave out one block at a time. */
function scatterOf$1(power, { spans, stepFactor, modelError }) {
	let short = deviation(power, spans[0]);
	const { pairs } = short;
	return {
		pairs,
		ratios: spans.map((span) => {
			const long = deviation(power, 2 * span, stepFactor * short.whole);
			const ratioOf = (a, b) => b === 0 ? 1 : a / b;
			const without = short.without.map((one, block) => ratioOf(one, long.without[block]));
			const ratio = ratioOf(short.whole, long.whole);
			short = long;
			return {
				span,
				ratio,
				error: Math.hypot(jackknifeError(without), modelError)
			};
		})
	};
}
/** The lag at which second differences are undone most, if by enough. */
function lagOfDip(correlation, dip) {
	let lag = 2;
	for (let k = 3; k < correlation.length; k++) if (correlation[k] < correlation[lag]) lag = k;
	return correlation[lag] <= dip ? lag : null;
}
/** Correlation of the second differences of power, changes clipped, at lags 0 … `longestSeconds`. */
function bendCorrelation(power, { clip, longestSeconds }) {
	const changes = power.map((watts, i) => watts - (power[i - 1] ?? NaN));
	const sizes = changes.filter((change) => !Number.isNaN(change)).map(Math.abs).sort();
	const most = clip * Math.max(1, 1.4826 * (sizes[sizes.length >> 1] ?? 0));
	const clipped = changes.map((change) => Math.max(-most, Math.min(most, change)));
	const covariance = autocovariance(clipped.map((change, i) => change - (clipped[i - 1] ?? NaN)), longestSeconds);
	const variance = Math.max(covariance[0] / 3, covariance[0] - .5);
	return covariance.map((value) => variance > 0 ? value / variance : 0);
}
/** A minute from the middle of the stretch, from where power flows, and the correlations. */
function chart$6(id, power, [start, end], correlation, seconds) {
	let from = start + end >> 1;
	while (from < end - 60 && Number.isNaN(power[from])) from++;
	return {
		kind: "averaging",
		id,
		correlation: Array.from(correlation.subarray(1), (r) => Math.round(r * 1e3) / 1e3),
		seconds,
		from,
		power: readings$1(power, from, from + 60)
	};
}
// src/measure/pair/blocks.ts
const kept$2 = /* @__PURE__ */ new WeakMap();
/**
* Averages the compared seconds in blocks of `seconds` by the clock; a block with less than half of its
* seconds, with a sprint in it, or below a third of the mean power of the ride, is left out: of soft
* pedalling and coasting a ratio says little. Worked out once for each length.
*/
function blocksOf(samples, seconds) {
	const known = kept$2.get(samples) ?? /* @__PURE__ */ new Map();
	kept$2.set(samples, known);
	const blocks = known.get(seconds) ?? average(samples, seconds);
	known.set(seconds, blocks);
	return blocks;
}
function average(samples, seconds) {
	const at = [];
	const own = [];
	const other = [];
	const cadence = [];
	const least = leastShare * meanOf$4(samples.other);
	for (let i = 0; i < samples.at.length;) {
		const block = Math.floor(samples.at[i] / seconds);
		const from = i;
		let ownSum = 0;
		let otherSum = 0;
		let cadenceSum = 0;
		let sprints = 0;
		for (; i < samples.at.length && Math.floor(samples.at[i] / seconds) === block; i++) {
			ownSum += samples.own[i];
			otherSum += samples.other[i];
			cadenceSum += samples.cadence[i];
			sprints += samples.sprint[i];
		}
		const n = i - from;
		if (sprints > 0 || n * 2 < seconds || Math.min(ownSum, otherSum) < n * least) continue;
		at.push((block + .5) * seconds);
		own.push(ownSum / n);
		other.push(otherSum / n);
		cadence.push(cadenceSum / n);
	}
	return {
		at: Float64Array.from(at),
		own: Float64Array.from(own),
		other: Float64Array.from(other),
		cadence: Float64Array.from(cadence),
		count: at.length
	};
}
/** Least mean power of a block, as a share of the second's mean over the ride. */
const leastShare = 1 / 3;
function meanOf$4(values) {
	return values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);
}
// src/math/robust-fit.ts
/** Tukey's constant for 95 % efficiency at the normal distribution (Beaton & Tukey 1974). */
const tuning = 4.685;
/** Median absolute deviation of a normal distribution, in standard deviations. */
const medianDeviation$1 = .6745;
const rounds = 30;
/**
* Linear fit that single bad blocks cannot turn: iteratively reweighted least squares with Tukey's
* biweight, from a start by Huber weights. Rows are taken to be in order of time: the errors are widened
* by √((1+ρ)/(1-ρ)) for a lag-1 correlation ρ of the residuals (never narrowed).
*
* @param columns regressors without the intercept, which is added as the first coefficient
* @returns null when there are fewer than 4 rows a coefficient or the regressors are not independent
*/
function robustFit(columns, y) {
	const size = columns.length + 1;
	if (y.length < 4 * size) return null;
	const design = [new Float64Array(y.length).fill(1), ...columns];
	let fit = leastSquares(design, y);
	if (fit === null) return null;
	let weights = new Float64Array(y.length).fill(1);
	for (let round = 0; round < rounds; round++) {
		const scale = spreadOf(fit.residuals);
		if (scale === 0) break;
		const weigh = round < 3 ? huber : biweight;
		const next = fit.residuals.map((residual) => weigh(residual / scale));
		const change = next.reduce((most, w, i) => Math.max(most, Math.abs(w - weights[i])), 0);
		weights = next;
		const refit = leastSquares(design, y, weights);
		if (refit === null) return null;
		fit = refit;
		if (round > 3 && change < 1e-6) break;
	}
	return describe$4(design, fit, weights);
}
function describe$4(design, fit, weights) {
	const total = weights.reduce((a, b) => a + b, 0);
	const rho = Math.max(0, neighbourCorrelation(fit.residuals, weights));
	const effectiveCount = total * (1 - rho) / (1 + rho);
	const freedom = Math.max(1, effectiveCount - design.length);
	const variance = fit.residuals.reduce((sum, residual, i) => sum + weights[i] * residual ** 2, 0) / Math.max(1, total - design.length) * ((1 + rho) / (1 - rho));
	return {
		coefficients: fit.coefficients,
		errors: fit.coefficients.map((_, k) => Math.sqrt(variance * fit.inverse[k][k])),
		reach: studentQuantile(.975, freedom),
		residuals: fit.residuals,
		inflation: Float64Array.from(design.slice(1), (column, k) => fit.inverse[k + 1][k + 1] * squaresAround(column, weights)),
		effectiveCount
	};
}
function spreadOf(residuals) {
	return median$1(Array.from(residuals, Math.abs)) / medianDeviation$1;
}
const huber = (z) => Math.min(1, 1.345 / Math.abs(z));
const biweight = (z) => Math.abs(z) < tuning ? (1 - (z / tuning) ** 2) ** 2 : 0;
function neighbourCorrelation(residuals, weights) {
	let products = 0;
	let squares = 0;
	for (let i = 0; i < residuals.length; i++) {
		squares += weights[i] * residuals[i] ** 2;
		if (i > 0) products += Math.sqrt(weights[i] * weights[i - 1]) * residuals[i] * residuals[i - 1];
	}
	return squares > 0 ? Math.min(.9, products / squares) : 0;
}
function squaresAround(column, weights) {
	const total = weights.reduce((a, b) => a + b, 0);
	const mean = column.reduce((sum, value, i) => sum + weights[i] * value, 0) / total;
	return column.reduce((sum, value, i) => sum + weights[i] * (value - mean) ** 2, 0);
}
// src/measure/pair/ratio-fit.ts
/** A regressor that hardly moves (log power, rpm) cannot explain anything, and would only widen the others. */
const leastSpread = {
	time: 0,
	power: .03,
	cadence: 2
};
const kept$1 = /* @__PURE__ */ new WeakMap();
/**
* Fits log(own/other) = a + b·time + c·max(0, log(P/P_median)) + d·cadence over blocks, robustly. P is the
* mean of both meters: banding by one of them makes a slope out of noise. Power counts above the median
* only, where errors that grow with power show, so that a zero offset at low power does not pass for one.
* Null when there are too few blocks. Worked out once for the same blocks.
*/
function fitRatio(blocks) {
	const known = kept$1.get(blocks);
	if (known !== void 0) return known;
	const fitted = blocks.count < 2 ? null : fitAnew(blocks);
	kept$1.set(blocks, fitted);
	return fitted;
}
function fitAnew(blocks) {
	const ratio = blocks.own.map((watts, i) => Math.log(watts / blocks.other[i]));
	const first = blocks.at[0];
	const last = blocks.at[blocks.count - 1];
	const middle = (first + last) / 2;
	const halfSpan = (last - first) / 2;
	const power = blocks.own.map((watts, i) => (watts + blocks.other[i]) / 2);
	const medianPower = medianSorted(Array.from(power).sort((a, b) => a - b));
	const columns = {
		time: blocks.at.map((at) => (at - middle) / halfSpan),
		power: power.map((watts) => Math.max(0, Math.log(watts / medianPower))),
		cadence: blocks.cadence
	};
	const effects = [
		"time",
		"power",
		"cadence"
	].filter((effect) => spread$1(columns[effect]) > leastSpread[effect]);
	const fitted = robustFit(effects.map((effect) => centred(columns[effect])), ratio);
	return fitted === null ? null : {
		fit: fitted,
		effects,
		middle,
		halfSpan,
		medianPower
	};
}
/** One effect of the fit: coefficient, standard error, and how far it can be told from the others. */
function effectOf({ fit: fitted, effects }, effect) {
	const k = effects.indexOf(effect);
	if (k < 0) return null;
	return {
		coefficient: fitted.coefficients[k + 1],
		error: fitted.errors[k + 1],
		reach: fitted.reach * fitted.errors[k + 1],
		inflation: fitted.inflation[k]
	};
}
/** Standard deviation; NaN (a column with gaps) is not greater than anything. */
function spread$1(column) {
	const mean = column.reduce((a, b) => a + b, 0) / column.length;
	return Math.sqrt(column.reduce((sum, value) => sum + (value - mean) ** 2, 0) / column.length);
}
function centred(column) {
	const mean = column.reduce((a, b) => a + b, 0) / column.length;
	return column.map((value) => value - mean);
}
// src/measure/pair/dependence.ts
/**
* How much the difference between two meters changes over the range of power or cadence that the ride
* used, %, with the other effects taken out in the same fit. The low end of the range is a quantile of
* the blocks, and so is the high end.
*/
function dependence$1(subject, blocks, axis, options) {
	if (blocks.count < options.leastBlocks) return notApplicable("too-few-blocks", {
		blocks: blocks.count,
		needed: options.leastBlocks
	});
	const sorted = Array.from(axis.column).sort((a, b) => a - b);
	const low = quantileSorted(sorted, options.lowQuantile);
	const high = quantileSorted(sorted, options.highQuantile);
	const range = axis.distance(low, high);
	if (!(range >= options.leastRange)) return notApplicable("narrow-range", { what: axis.effect });
	const ratio = fitRatio(blocks);
	const effect = ratio === null ? null : effectOf(ratio, axis.effect);
	if (effect === null || effect.inflation > options.mostInflation) return notApplicable("cannot-separate");
	const change = (coefficient) => 100 * Math.expm1(coefficient * range);
	const error = 100 * effect.error * range;
	const { coefficient, reach } = effect;
	return measured(change(coefficient), "%", [change(coefficient - reach), change(coefficient + reach)], blocks.count, {
		expected: {
			declared: {
				centre: 0,
				spread: Math.hypot(options.declaredSpread, error)
			},
			field: {
				centre: 0,
				spread: Math.hypot(options.fieldSpread, error)
			}
		},
		details: {
			from: {
				value: low,
				unit: axis.unit
			},
			to: {
				value: high,
				unit: axis.unit
			}
		},
		charts: [chart$5(subject, blocks, axis, sorted)]
	});
}
/** Bands of equal count, so that each dot rests on as much. */
const bands = 6;
function chart$5(subject, blocks, axis, sorted) {
	const percents = Array.from(blocks.own, (own, i) => 100 * own / blocks.other[i]);
	const edges = Array.from({ length: 7 }, (_, k) => quantileSorted(sorted, k / bands));
	return {
		kind: "dependence",
		id: `${axis.effect} dependence ${subject}`,
		subject,
		of: axis.effect,
		unit: axis.unit,
		points: percents.map((percent, i) => ({
			x: axis.column[i],
			percent
		})),
		bands: edges.slice(1).flatMap((to, k) => {
			const from = edges[k];
			const inside = percents.filter((_, i) => axis.column[i] >= from && (axis.column[i] < to || k === 5));
			return inside.length < 3 ? [] : [{
				from,
				to,
				count: inside.length,
				...meanWithInterval(inside)
			}];
		})
	};
}
function meanWithInterval(values) {
	const mean = values.reduce((a, b) => a + b, 0) / values.length;
	const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
	const half = studentQuantile(.975, values.length - 1) * Math.sqrt(variance / values.length);
	return {
		percent: mean,
		low: mean - half,
		high: mean + half
	};
}
// src/measure/pair/samples.ts
const kept = /* @__PURE__ */ new WeakMap();
/**
* A meter that shows exactly 0 for this long (s) while the other shows real power (W) has lost its link:
* the second is not a measurement of its. Flywheel tails and lag are shorter (common practice, no source).
*/
const silence = {
	seconds: 6,
	watts: 40
};
/** Seconds around a sprint in which lag and averaging still carry it. */
const sprintRoom = 5;
/**
* Seconds of the race valid on both, in which either meter shows power: zeros of both are coasting and
* say nothing about a gain; a zero of one alone is part of how it differs, unless it goes on so long that
* its link must have been lost. Worked out once a pair.
*/
function pairSamples(all, pair) {
	const known = kept.get(pair);
	if (known !== void 0) return known;
	const own = all.primary.channels.power;
	const other = pair.series.channels.power;
	const ownCadence = all.primary.channels.cadence;
	const otherCadence = pair.series.channels.cadence;
	const lost = new Uint8Array(own.length);
	markSilence(own, other, lost);
	markSilence(other, own, lost);
	const sprinting = new Uint8Array(own.length);
	for (const { kind, stretch } of all.sections) if (kind === "sprint") sprinting.fill(1, Math.max(0, stretch[0] - sprintRoom), stretch[1] + sprintRoom);
	const usable = [];
	for (let t = all.window[0]; t < all.window[1]; t++) if (own[t] >= 0 && other[t] >= 0 && lost[t] === 0 && (own[t] > 0 || other[t] > 0)) usable.push(t);
	const at = Int32Array.from(usable);
	const samples = {
		at,
		own: Float64Array.from(at, (t) => own[t]),
		other: Float64Array.from(at, (t) => other[t]),
		cadence: Float64Array.from(at, (t) => firstValid(ownCadence?.[t], otherCadence?.[t])),
		sprint: Uint8Array.from(at, (t) => sprinting[t])
	};
	kept.set(pair, samples);
	return samples;
}
/** Marks stretches in which one meter stays at 0 while the other shows real power for long enough. */
function markSilence(silent, going, lost) {
	let from = -1;
	let missed = 0;
	for (let t = 0; t <= silent.length; t++) if (silent[t] === 0) {
		if (from < 0) from = t;
		if (going[t] >= silence.watts) missed++;
	} else {
		if (from >= 0 && missed >= silence.seconds) lost.fill(1, from, t);
		from = -1;
		missed = 0;
	}
}
function firstValid(a = NaN, b = NaN) {
	return Number.isNaN(a) ? b : a;
}
// src/measure/cadence-dependence.ts
/**
* How much the difference between two meters changes from slow to fast cadence, in percent, at equal power
* and time. In one gear, cadence is flywheel speed.
*/
const cadenceDependence = defineMeasure({
	id: "cadence-dependence",
	of: "pair",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks that make a slope"),
		mostInflation: number$3("variance inflation above which cadence cannot be told from time and power"),
		lowQuantile: number$3("quantile of block cadence where the range begins"),
		highQuantile: number$3("quantile of block cadence where the range ends"),
		leastRange: number$3("least range of cadence, rpm"),
		declaredSpread: number$3("honest change between two meters within their claims, one standard deviation, %"),
		fieldSpread: number$3("honest change between two meters as found in the field, one standard deviation, %")
	},
	compute(all, pair, options) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
		const column = blocks.cadence;
		if (column.some(Number.isNaN)) return notApplicable("no-channel", { channel: "cadence" });
		const distance = (from, to) => to - from;
		return dependence$1(pair.subject, blocks, {
			effect: "cadence",
			unit: "rpm",
			column,
			distance
		}, options);
	}
});
// src/math/repeats.ts
/** Earlier windows of equal hash that are compared: bounds the work on hostile, periodic input. */
const mostCandidates = 16;
const base = 16777619;
/**
* Finds exact repeats by a rolling hash over windows, each match verified sample by sample and extended
* both ways (Karp and Rabin 1987, IBM J Res Dev 31:249). NaN equals nothing, itself included. The two
* copies do not overlap. Expected linear time; each diagonal is walked once.
*/
function exactRepeats(values, { window, split, telling }) {
	const count = values.length - window + 1;
	if (count < 2) return [];
	const hashes = rollingHashes(values, window);
	let size = 1;
	while (size < 2 * count) size *= 2;
	const heads = new Int32Array(size).fill(-1);
	const before = new Int32Array(count).fill(-1);
	const reached = /* @__PURE__ */ new Map();
	const found = [];
	for (let i = 0; i < count; i++) {
		if (Number.isNaN(hashes[i]) || !telling(i)) continue;
		const slot = (hashes[i] ^ hashes[i] >>> 15) & size - 1;
		let candidates = 0;
		for (let p = heads[slot]; p >= 0 && candidates < mostCandidates; p = before[p], candidates++) {
			if (hashes[p] !== hashes[i] || p + window > i || split > 0 && i < split) continue;
			const done = reached.get(i - p) ?? split;
			if (done > i) continue;
			const repeat = extend(values, p, i, split, done);
			reached.set(i - p, Math.max(i + 1, repeat.second + repeat.length));
			if (repeat.length >= window) found.push(repeat);
		}
		if (split > 0 && i + window > split) continue;
		before[i] = heads[slot];
		heads[slot] = i;
	}
	return found;
}
/** Hash of each window of samples, NaN where it holds a NaN; equal to a thousandth means equal. */
function rollingHashes(values, window) {
	const hashes = new Float64Array(values.length - window + 1).fill(NaN);
	let leading = 1;
	for (let k = 0; k < window; k++) leading = Math.imul(leading, base);
	let hash = 0;
	let clean = 0;
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		if (Number.isNaN(value)) {
			hash = 0;
			clean = 0;
			continue;
		}
		hash = Math.imul(hash, base) + token$1(value) | 0;
		if (clean >= window) hash = hash - Math.imul(leading, token$1(values[i - window])) | 0;
		clean++;
		if (clean >= window) hashes[i - window + 1] = hash;
	}
	return hashes;
}
function token$1(value) {
	return Math.imul(Math.round(value * 1e3) | 0, 2654435761) ^ 1540483477;
}
/**
* The longest repeat through two equal places: the second copy begins at `from` or later, and the first
* ends before the second begins (before the split, where there is one).
*/
function extend(values, first, second, split, from) {
	const distance = second - first;
	let start = first;
	while (start > 0 && start - 1 + distance >= from && values[start - 1] === values[start - 1 + distance]) start--;
	const most = Math.min(values.length - distance - start, split > 0 ? split - start : distance);
	let length = 0;
	while (length < most && values[start + length] === values[start + distance + length]) length++;
	return {
		first: start,
		second: start + distance,
		length
	};
}
// src/measure/recording/copies.ts
/**
* Stretches whose changes occur twice, sample by sample, and that chance would not bring; the longest
* first. Constant stretches and even ramps repeat by themselves and are passed over. Positions and lengths
* are those of samples.
*
* @param split where a second series begins, when two are laid end to end with a NaN between them; else 0
*/
function copiesIn(values, split, options) {
	const changes = new Float64Array(values.length).fill(NaN);
	for (let i = 1; i < values.length; i++) changes[i] = values[i] - values[i - 1];
	const bends = new Int32Array(values.length + 1);
	for (let i = 1; i < values.length; i++) bends[i + 1] = bends[i] + (changes[i] === changes[i - 1] ? 0 : 1);
	const window = options.windowSamples;
	const bendsIn = (from, length) => bends[from + length] - bends[from];
	const repeats = exactRepeats(changes, {
		window,
		split,
		telling: (from) => bendsIn(from, window) >= options.tellingShare * window
	});
	if (repeats.length === 0) return [];
	const agreement = agreementByChance(changes);
	const pairs = changes.length * changes.length / 2;
	return repeats.filter(({ first, length }) => {
		const expected = pairs * agreement ** bendsIn(first, length);
		const distinct = new Set(changes.subarray(first, first + length)).size;
		return expected <= options.chance && distinct >= options.distinctChanges;
	}).map(({ first, second, length }) => ({
		first: first - 1,
		second: second - 1,
		length: length + 1
	})).sort((a, b) => b.length - a.length || a.first - b.first);
}
/**
* Probability that two places at which a series bends, alike so far, go on alike: from how often two
* changes agree, alone and together with the change before them. The larger of the two counts.
*/
function agreementByChance(changes) {
	const single = /* @__PURE__ */ new Map();
	const double = /* @__PURE__ */ new Map();
	for (let i = 2; i < changes.length; i++) {
		const change = changes[i];
		const before = changes[i - 1];
		if (Number.isNaN(change) || Number.isNaN(before) || change === before) continue;
		count$2(single, change);
		count$2(double, Math.round(change * 1e3) * 2 ** 21 + Math.round(before));
	}
	const alone = agreement$1(single);
	return alone === 0 ? 0 : Math.max(alone, agreement$1(double) / alone);
}
function count$2(counts, key) {
	counts.set(key, (counts.get(key) ?? 0) + 1);
}
/** Probability that two draws, one after the other, give the same. */
function agreement$1(counts) {
	let total = 0;
	let pairs = 0;
	for (const number of counts.values()) {
		total += number;
		pairs += number * (number - 1);
	}
	return total < 2 ? 0 : pairs / (total * (total - 1));
}
// src/measure/recording/samples.ts
/**
* Power as the file holds it, in its own order, before any second was averaged or moved: what questions
* about the digits and the sequence of a recording need. A second recording, which has no other place in
* the ride than its aligned grid, is taken from there.
*/
function samplesOf(all, series) {
	const column = series.channels.power;
	if (column === void 0) return null;
	const { time, channels } = series.recording;
	if (series !== all.primary || channels.power === void 0) return {
		power: column,
		at: Float64Array.from(column, (_, second) => second)
	};
	return {
		power: channels.power,
		at: time.map((clock) => Math.round(clock) - series.start)
	};
}
// src/measure/copied-seconds.ts
/** Copies shown side by side. */
const shown$2 = 4;
/**
* Length of the longest stretch whose changes of power occur a second time, sample by sample: an exact
* length. Only samples at which power bends (its change differs from the change before) tell anything:
* constant stretches and even ramps repeat by themselves. A repeat that chance would bring counts for
* nothing; the chance comes from how often two such changes of this very recording agree.
*/
const copiedSeconds = defineMeasure({
	id: "copied-seconds",
	of: "recording",
	options: {
		windowSamples: number$3("shortest repeat looked for"),
		tellingShare: number$3("share of its samples at which power must bend"),
		distinctChanges: number$3("different changes of power it must hold: an even ramp repeats its rounding"),
		chance: number$3("number of such repeats expected by chance, above which one counts for nothing"),
		sameMomentSeconds: number$3("copies closer than this in time are one moment written twice, s"),
		minimumSamples: number$3("samples of power below which nothing is said")
	},
	compute(all, recording, options) {
		const samples = samplesOf(all, recording);
		if (samples === null) return notApplicable("no-channel", { channel: "power" });
		const valid = samples.power.reduce((sum, watts) => Number.isNaN(watts) ? sum : sum + 1, 0);
		if (valid < options.minimumSamples) return notApplicable("too-short", {
			seconds: valid,
			needed: options.minimumSamples
		});
		const copies = copiesIn(samples.power, 0, options).filter(({ first, second }) => Math.abs(samples.at[second] - samples.at[first]) > options.sameMomentSeconds);
		const longest = copies[0];
		return exact(longest?.length ?? 0, "s", valid, {
			stretches: copies.slice(0, shown$2).flatMap(({ first, second, length }) => [[samples.at[first], samples.at[first] + length], [samples.at[second], samples.at[second] + length]]).sort((a, b) => a[0] - b[0]),
			details: {
				copies: copies.length,
				total: {
					value: copies.reduce((sum, { length }) => sum + length, 0),
					unit: "s"
				},
				...longest === void 0 ? {} : {
					first: samples.at[longest.first],
					second: samples.at[longest.second],
					offset: {
						value: samples.power[longest.second] - samples.power[longest.first],
						unit: "W"
					}
				}
			},
			charts: longest === void 0 ? [] : [chart$4(`copies:${subjectOf(all, recording)}`, samples, copies)]
		});
	}
});
function chart$4(id, { power, at }, copies) {
	return {
		kind: "copies",
		id,
		copies: copies.slice(0, shown$2).map(({ first, second, length }) => ({
			at: [at[first], at[second]],
			seconds: length,
			first: readings$1(power, first, first + length),
			second: readings$1(power, second, second + length)
		}))
	};
}
// src/measure/crossing-time.ts
/**
* When a drifting primary passed the second, minutes into the race, by the fitted trend: a unit that reads
* low while cold and high once warm crosses on the way, which dates its last zero or spin-down.
*/
const crossingTime = defineMeasure({
	id: "crossing-time",
	of: "pair",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks that make a trend"),
		mostInflation: number$3("variance inflation above which time cannot be told from power and cadence"),
		leastGrowth: number$3("least change over the race that counts as a drift, at its cautious end, %")
	},
	compute(all, pair, options) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
		const ratio = blocks.count < options.leastBlocks ? null : fitRatio(blocks);
		if (ratio === null) return notApplicable("too-few-blocks", {
			blocks: blocks.count,
			needed: options.leastBlocks
		});
		const time = effectOf(ratio, "time");
		if (time === null || time.inflation > options.mostInflation) return notApplicable("cannot-separate");
		const cautious = Math.abs(time.coefficient) - time.reach;
		if (100 * Math.expm1(2 * cautious) < options.leastGrowth) return notApplicable("no-drift");
		const crossing = -ratio.fit.coefficients[0] / time.coefficient;
		if (Math.abs(crossing) >= 1) return notApplicable("no-crossing");
		const minutes = (at) => (ratio.middle + ratio.halfSpan * at - all.window[0]) / 60;
		const error = Math.hypot(ratio.fit.errors[0], crossing * time.error) / Math.abs(time.coefficient);
		const half = ratio.fit.reach * error;
		const value = minutes(crossing);
		const race = (all.window[1] - all.window[0]) / 60;
		const within = (at) => Math.max(0, Math.min(race, minutes(at)));
		return measured(value, "min", [within(crossing - half), within(crossing + half)], blocks.count, {
			stretches: [all.window],
			details: { direction: time.coefficient > 0 ? "below to above" : "above to below" }
		});
	}
});
// src/math/change-point.ts
/**
* The one change of mean that leaves the smallest sum of squares, each side holding at least `least`
* values. Null when there are fewer than 2·least values.
*/
function changePoint(values, least) {
	const n = values.length;
	if (n < 2 * least) return null;
	const centre = values.reduce((a, b) => a + b, 0) / n;
	let total = 0;
	const squaresOfOne = values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
	let best = null;
	for (let at = 1; at < n; at++) {
		total += values[at - 1] - centre;
		if (at < least || n - at < least) continue;
		const squares = squaresOfOne - total ** 2 / at - total ** 2 / (n - at);
		if (best !== null && squares >= best.squares) continue;
		best = {
			at,
			before: centre + total / at,
			after: centre - total / (n - at),
			squares,
			squaresOfOne
		};
	}
	return best;
}
// src/measure/difference-trend.ts
/**
* Growth of the difference between two meters from the start to the end of the race, in percent, with
* the parts that power and cadence explain taken out in one fit. The ratio is fitted on its logarithm.
*/
const differenceTrend = defineMeasure({
	id: "difference-trend",
	of: "pair",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks that make a trend"),
		mostInflation: number$3("variance inflation above which time cannot be told from power and cadence"),
		declaredSpread: number$3("honest growth between two meters within their claims, one standard deviation, %"),
		fieldSpread: number$3("honest growth between two meters as found in the field, one standard deviation, %"),
		stepBlocks: number$3("fewest blocks on either side of a step"),
		stepEvidence: number$3("n·log of the misfit of a line over that of a step, from which it counts as a step")
	},
	circumstances: { "in one step": "the difference changed in one step, as after a zero offset or when a pedal drops out, not by drifting" },
	compute(all, pair, options) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
		if (blocks.count < options.leastBlocks) return notApplicable("too-few-blocks", {
			blocks: blocks.count,
			needed: options.leastBlocks
		});
		const ratio = fitRatio(blocks);
		const time = ratio === null ? null : effectOf(ratio, "time");
		if (ratio === null || time === null || time.inflation > options.mostInflation) return notApplicable("cannot-separate");
		return describe$3(all, pair.subject, blocks, ratio, options);
	}
});
function describe$3(all, subject, blocks, ratio, options) {
	const [from, to] = all.window;
	const { coefficient: slope, error, reach } = effectOf(ratio, "time");
	const race = (to - from) / ratio.halfSpan;
	const growth = (b) => 100 * Math.expm1(b * race);
	const sampling = 100 * race * error;
	return measured(growth(slope), "%", [growth(slope - reach), growth(slope + reach)], blocks.count, {
		stretches: [all.window],
		expected: {
			declared: {
				centre: 0,
				spread: Math.hypot(options.declaredSpread, sampling)
			},
			field: {
				centre: 0,
				spread: Math.hypot(options.fieldSpread, sampling)
			}
		},
		circumstances: isStep(blocks, ratio, options) ? ["in one step"] : [],
		details: {
			early: {
				value: thirdDifference(blocks, from, from + (to - from) / 3),
				unit: "%"
			},
			late: {
				value: thirdDifference(blocks, to - (to - from) / 3, to),
				unit: "%"
			},
			minutes: {
				value: (to - from) / 60,
				unit: "min"
			}
		},
		charts: [ratioChart(subject, blocks, ratio)]
	});
}
/**
* Whether one change of level fits the difference, the parts of power and cadence taken out, better than a
* line in time does. Both have two numbers to fit; the step's place is a third, which the evidence pays for.
*/
function isStep(blocks, { fit, middle, halfSpan }, { stepBlocks, stepEvidence }) {
	const line = fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0);
	const adjusted = fit.residuals.map((r, i) => r + fit.coefficients[1] * ((blocks.at[i] - middle) / halfSpan));
	const step = changePoint(adjusted, stepBlocks);
	return step !== null && adjusted.length * Math.log(line / step.squares) >= stepEvidence;
}
/** Plain difference over a part of the race, %: a description, not what is judged. */
function thirdDifference(blocks, from, to) {
	let own = 0;
	let other = 0;
	blocks.at.forEach((at, i) => {
		if (at < from || at >= to) return;
		own += blocks.own[i];
		other += blocks.other[i];
	});
	return other > 0 ? 100 * (own / other - 1) : 0;
}
const trendPoints = 25;
function ratioChart(subject, blocks, { fit, middle, halfSpan }) {
	const percent = (log) => 100 * Math.exp(log);
	return {
		kind: "ratio",
		id: `ratio ${subject}`,
		subject,
		blocks: Array.from(blocks.at, (at, i) => ({
			at,
			percent: 100 * blocks.own[i] / blocks.other[i],
			watts: (blocks.own[i] + blocks.other[i]) / 2
		})),
		trend: Array.from({ length: trendPoints }, (_, i) => {
			const time = 2 * i / 24 - 1;
			const level = fit.coefficients[0] + fit.coefficients[1] * time;
			const half = fit.reach * Math.hypot(fit.errors[0], fit.errors[1] * time);
			return {
				at: middle + halfSpan * time,
				percent: percent(level),
				low: percent(level - half),
				high: percent(level + half)
			};
		})
	};
}
// src/math/grubbs.ts
/**
* Error variance of each of three or more instruments that measured the same items, from the variances of
* their pairwise differences (Grubbs 1948, J Am Stat Assoc 43:243-264; 1973, Technometrics 15:53-66). With
* three, σ₁² = (s₁₂² + s₁₃² - s₂₃²)/2; with more, the mean over all such triples. May come out negative,
* which says that the data do not tell that instrument's error from nothing.
*
* @param readings one array for each instrument, item by item
*/
function grubbsVariances(readings) {
	const size = readings.length;
	const pairs = readings.map((a) => readings.map((b) => varianceOfDifference(a, b)));
	return readings.map((_, i) => {
		let sum = 0;
		let triples = 0;
		for (let j = 0; j < size; j++) for (let k = j + 1; k < size; k++) {
			if (j === i || k === i) continue;
			sum += (pairs[i][j] + pairs[i][k] - pairs[j][k]) / 2;
			triples++;
		}
		return sum / triples;
	});
}
function varianceOfDifference(a, b) {
	const n = a.length;
	let mean = 0;
	for (let i = 0; i < n; i++) mean += (a[i] - b[i]) / n;
	let squares = 0;
	for (let i = 0; i < n; i++) squares += (a[i] - b[i] - mean) ** 2;
	return squares / (n - 1);
}
// src/measure/pair/expected.ts
/**
* Scatter of honest meters in the field, % (one standard deviation): 54 meters of 9 makers around a
* reference, -0.9 ± 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461).
*/
const fieldScatter = 3.2;
/** Loss in the chain, %: 2.1 ± 1.5 (Smit et al. 2023, Sports Eng., doi 10.1007/s12283-023-00439-z). */
const chainLoss = {
	centre: 2.1,
	spread: 1.5
};
/**
* A meter of one leg, doubled, %: healthy riders' legs differ in power by several percent (Kell & Greer
* 2017, J Strength Cond Res 31:468-473; Osmani 2022: 50.56 to 49.44 in 23 amateurs).
*/
const oneSidedSpread = 3;
/**
* Where the overall difference of an honest pair lies, % of the second: centre from the places of the
* two meters, spread from what is claimed for each (a rectangle of ±a has a standard deviation of a/√3,
* JCGM 100:2008) or from scatter found in the field, the place, one-sided meters and the sampling error.
*
* @param error standard error of the measured difference, %
*/
function expectedDifference(all, subject, error) {
	const { own, other } = declaredPair(all, subject);
	const place = placeDifference(own, other);
	const sides = [own, other].filter((device) => device?.sides === 1).length * oneSidedSpread ** 2;
	const common = place.spread ** 2 + sides + error ** 2;
	const claims = claimed$1(own) ** 2 + claimed$1(other) ** 2;
	return {
		declared: {
			centre: place.centre,
			spread: Math.sqrt(claims + common)
		},
		field: {
			centre: place.centre,
			spread: Math.sqrt(2 * fieldScatter ** 2 + common)
		}
	};
}
function claimed$1(device) {
	return device === null ? fieldScatter : Math.min(device.tolerancePercent / Math.sqrt(3), fieldScatter);
}
/** Primary over second, %: a meter behind the chain reads its loss below one before it. */
function placeDifference(own, other) {
	const sides = [behindChain(own), behindChain(other)];
	if (sides.includes(null)) return {
		centre: 0,
		spread: Math.hypot(chainLoss.spread, chainLoss.centre / 2)
	};
	if (sides[0] === sides[1]) return {
		centre: 0,
		spread: 0
	};
	return {
		centre: sides[0] === true ? -chainLoss.centre : chainLoss.centre,
		spread: chainLoss.spread
	};
}
function behindChain(device) {
	return device === null ? null : device.place === "hub" || device.place === "trainer";
}
// src/measure/distance-from-others.ts
/**
* With three independent meters or more: how far the one that lies farthest is from the mean of the others,
* %, loss in the chain allowed for, over the seconds that all of them recorded. Where the others lie as far
* apart among themselves, none is the odd one.
*/
const distanceFromOthers = defineMeasure({
	id: "distance-from-others",
	of: "submission",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks"),
		mostOfDistance: number$3("how far apart the others may lie, as a share of the distance, before none is the odd one")
	},
	circumstances: {
		"not the primary": "it is not the primary that lies apart",
		"no odd one": "the other meters lie as far apart among themselves",
		"alone on its side": "it is the only meter on its side of the chain, so loss in the chain may be part of it"
	},
	compute(all, _, { blockSeconds, leastBlocks, mostOfDistance }) {
		const meters = independentMeters(all);
		if (meters.length < 3) return notApplicable("no-third", { meters: meters.length });
		const blocks = commonBlocks(meters, all.window, blockSeconds);
		const count = blocks[0].length;
		if (count < leastBlocks) return notApplicable("too-few-blocks", {
			blocks: count,
			needed: leastBlocks
		});
		const logs = meters.map(({ device }, i) => Math.log(mean$2(blocks[i])) - placeOf$2(device) / 100);
		const distances = logs.map((log, i) => log - mean$2(logs.filter((_l, j) => j !== i)));
		const odd = distances.reduce((far, d, i) => Math.abs(d) > Math.abs(distances[far]) ? i : far, 0);
		const rest = logs.filter((_, j) => j !== odd);
		const apart = Math.max(...rest) - Math.min(...rest);
		const value = 100 * Math.expm1(distances[odd]);
		const side = meters.map(({ device }) => behindChain(device));
		const alone = side.filter((one) => one === side[odd]).length === 1;
		const spread = Math.hypot(fieldScatter * Math.sqrt(1 + 1 / rest.length), alone ? chainLoss.spread : 0);
		return measured(value, "%", [value, value], count, {
			stretches: [all.window],
			expected: {
				declared: {
					centre: 0,
					spread
				},
				field: {
					centre: 0,
					spread
				}
			},
			circumstances: [
				...odd === 0 ? [] : ["not the primary"],
				...apart > mostOfDistance * Math.abs(distances[odd]) ? ["no odd one"] : [],
				...alone ? ["alone on its side"] : []
			],
			details: {
				meter: odd === 0 ? "primary" : `second ${odd}`,
				apart: {
					value: 100 * apart,
					unit: "%"
				},
				meters: meters.length
			},
			charts: [chart$3(meters, blocks, distances)]
		});
	}
});
function independentMeters(all) {
	const { primary, rider, seconds } = all;
	const own = primary.channels.power;
	const others = seconds.filter((pair) => gate(pair) === null && pair.alignment.origin === "independent");
	if (own === void 0) return [];
	return [{
		subject: "primary",
		power: own,
		device: declaredFor(rider.devices, primary.recording.name, "primary")
	}, ...others.map(({ subject, series }) => ({
		subject,
		power: series.channels.power,
		device: declaredPair(all, subject).other
	}))];
}
/** Where a meter of this place reads, % of crank power. */
function placeOf$2(device) {
	return behindChain(device) === true ? -chainLoss.centre : 0;
}
/** Block means of every meter over the seconds that all recorded, with power on at least one. */
function commonBlocks(meters, [from, to], seconds) {
	const blocks = meters.map(() => []);
	for (let start = from; start + seconds <= to; start += seconds) {
		const sums = meters.map(() => 0);
		let count = 0;
		for (let t = start; t < start + seconds; t++) {
			const watts = meters.map(({ power }) => power[t]);
			if (watts.some(Number.isNaN) || watts.every((w) => w === 0)) continue;
			for (const [i, w] of watts.entries()) sums[i] += w;
			count++;
		}
		if (count * 2 < seconds || sums.some((sum) => sum <= 0)) continue;
		for (const [i, sum] of sums.entries()) blocks[i].push(sum / count);
	}
	return blocks.map((values) => Float64Array.from(values));
}
function chart$3(meters, blocks, distances) {
	const variances = grubbsVariances(blocks.map((values) => values.map(Math.log)));
	const overall = blocks.map(mean$2);
	return {
		kind: "meters",
		id: "meters",
		meters: meters.map(({ subject }, i) => ({
			subject,
			watts: overall[i],
			percent: 100 * Math.expm1(distances[i]),
			scatter: variances[i] > 0 ? 100 * Math.sqrt(variances[i]) : null
		})),
		pairs: meters.flatMap(({ subject: a }, i) => meters.slice(i + 1).map(({ subject: b }, k) => ({
			a,
			b,
			percent: 100 * (overall[i] / overall[i + 1 + k] - 1)
		})))
	};
}
function mean$2(values) {
	let sum = 0;
	for (let i = 0; i < values.length; i++) sum += values[i];
	return sum / values.length;
}
// src/math/limits-of-agreement.ts
/** Standard normal quantile of 97.5 %, as rounded by the authors. */
const reach$1 = 1.96;
/**
* Limits between which about 95 % of the differences of two methods lie (Bland & Altman 1986, Lancet
* 1:307-310): mean ± 1.96 standard deviations. Error of a limit: s·√(1/n + 1.96²/(2(n-1))) (the same 1999,
* Stat Methods Med Res 8:135-160).
*
* @param differences at least 2
*/
function limitsOfAgreement(differences) {
	const n = differences.length;
	const mean = differences.reduce((a, b) => a + b, 0) / n;
	const squares = differences.reduce((sum, difference) => sum + (difference - mean) ** 2, 0);
	const spread = Math.sqrt(squares / (n - 1));
	const error = spread * Math.sqrt(1 / n + reach$1 ** 2 / (2 * (n - 1)));
	return {
		mean,
		spread,
		low: mean - reach$1 * spread,
		high: mean + reach$1 * spread,
		error
	};
}
// src/measure/effort-spread.ts
/** Of a normal distribution: median absolute deviation in standard deviations, and its efficiency. */
const medianDeviation = .6745;
const medianEfficiency = .37;
/**
* How far apart two meters are in single efforts of half a minute: half the width of the limits of
* agreement (Bland & Altman 1986, 1999) on the logarithm of their ratio, %, once drift and dependence on
* power and cadence are taken out. The interval is that of a limit of agreement.
*/
const effortSpread = defineMeasure({
	id: "effort-spread",
	of: "pair",
	options: {
		blockSeconds: number$3("length of an effort, s"),
		leastBlocks: number$3("fewest efforts")
	},
	compute(all, pair, { blockSeconds, leastBlocks }) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const blocks = blocksOf(pairSamples(all, pair), blockSeconds);
		const ratio = blocks.count < leastBlocks ? null : fitRatio(blocks);
		if (ratio === null) return notApplicable("too-few-blocks", {
			blocks: blocks.count,
			needed: leastBlocks
		});
		const { residuals } = ratio.fit;
		const n = residuals.length;
		const spread = medianSorted(Array.from(residuals, Math.abs).sort((x, y) => x - y)) / medianDeviation;
		const error = spread * Math.sqrt(1 / n + 1.96 ** 2 / (2 * medianEfficiency * (n - 1)));
		const half = (deviations) => 100 * Math.expm1(Math.max(0, deviations));
		const reach = studentQuantile(.975, n - 1) * error;
		return measured(half(1.96 * spread), "%", [half(1.96 * spread - reach), half(1.96 * spread + reach)], n, {
			stretches: [all.window],
			details: { seconds: {
				value: blockSeconds,
				unit: "s"
			} },
			charts: [agreementChart(pair.subject, blocks)]
		});
	}
});
function agreementChart(subject, blocks) {
	const points = Array.from(blocks.own, (own, i) => ({
		watts: (own + blocks.other[i]) / 2,
		percent: 100 * (own / blocks.other[i] - 1)
	}));
	const { mean, low, high } = limitsOfAgreement(points.map(({ percent }) => percent));
	return {
		kind: "agreement",
		id: `agreement ${subject}`,
		subject,
		points,
		mean,
		low,
		high
	};
}
// src/math/normal-table.ts
const stepsPerUnit = 64;
const reach = 6;
const size = 769;
const z = (k) => k / stepsPerUnit - reach;
const densities = Float64Array.from({ length: size }, (_, k) => Math.exp(-(z(k) ** 2) / 2) / Math.sqrt(2 * Math.PI));
const probabilities = Float64Array.from({ length: size }, (_, k) => normalProbability(z(k)));
/** Standard normal density out of a table, straight between entries: within 2e-5, 0 beyond 6. */
const tabledDensity = (value) => lookUp(densities, value, 0, 0);
/** Probability that a standard normal is at most `value`, out of a table: within 1e-5. */
const tabledProbability = (value) => lookUp(probabilities, value, 0, 1);
function lookUp(table, value, below, above) {
	const place = (value + reach) * stepsPerUnit;
	if (place <= 0) return below;
	if (place >= 768) return above;
	const k = Math.floor(place);
	return table[k] + (place - k) * (table[k + 1] - table[k]);
}
// src/math/belief.ts
/** Believes every value from `first` to `last` alike. */
function evenBelief(first, last, step) {
	const size = Math.max(2, Math.round((last - first) / step) + 1);
	return {
		first,
		step,
		weights: new Float64Array(size).fill(1 / size)
	};
}
/** Scales the weights to sum to 1; returns the sum they had. */
function normaliseWeights(weights) {
	let sum = 0;
	for (let i = 0; i < weights.length; i++) sum += weights[i];
	for (let i = 0; i < weights.length; i++) weights[i] /= sum;
	return sum;
}
/** The belief after the number has moved by an unknown, normal amount: convolution, mass kept at the ends. */
function blurred(belief, spread) {
	const { first, step, weights } = belief;
	const reach = Math.min(weights.length - 1, Math.ceil(4 * spread / step));
	if (spread === 0 || reach === 0) return belief;
	const kernel = new Float64Array(reach + 1);
	let total = 0;
	for (let k = 0; k <= reach; k++) {
		kernel[k] = Math.exp(-.5 * (k * step / spread) ** 2);
		total += k === 0 ? kernel[k] : 2 * kernel[k];
	}
	const last = weights.length - 1;
	const moved = new Float64Array(weights.length);
	for (let i = 0; i <= last; i++) {
		const weight = weights[i] / total;
		if (weight === 0) continue;
		moved[i] += weight * kernel[0];
		for (let k = 1; k <= reach; k++) {
			const part = weight * kernel[k];
			moved[Math.max(0, i - k)] += part;
			moved[Math.min(last, i + k)] += part;
		}
	}
	return {
		first,
		step,
		weights: moved
	};
}
/** The belief after the number has turned out higher by an unknown, exponential amount. */
function raised(belief, mean) {
	const keep = Math.exp(-belief.step / mean);
	const weights = new Float64Array(belief.weights.length);
	let carried = 0;
	for (let i = 0; i < weights.length; i++) {
		carried = carried * keep + belief.weights[i] * (1 - keep);
		weights[i] = carried;
	}
	normaliseWeights(weights);
	return {
		...belief,
		weights
	};
}
/** Probability that a fresh observation, off by a normal amount, is at least `value`. */
function chanceAbove(belief, value, spread) {
	const { first, step, weights } = belief;
	let chance = 0;
	for (let i = 0; i < weights.length; i++) {
		if (weights[i] < 1e-12) continue;
		chance += weights[i] * tabledProbability((first + i * step - value) / spread);
	}
	return Math.min(1, chance);
}
/** The value that a fresh observation exceeds with this chance, by bisection. */
function valueExceeded(belief, chance, spread) {
	let low = belief.first - 8 * spread;
	let high = belief.first + belief.step * belief.weights.length + 8 * spread;
	for (let i = 0; i < 40; i++) {
		const middle = (low + high) / 2;
		if (chanceAbove(belief, middle, spread) > chance) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
/** The value below which this share of the belief lies, straight between grid points. */
function beliefQuantile({ first, step, weights }, share) {
	let below = 0;
	for (let i = 0; i < weights.length; i++) {
		const next = below + weights[i];
		if (next >= share) return first + step * (i - .5 + (share - below) / weights[i]);
		below = next;
	}
	return first + step * (weights.length - 1);
}
// src/math/correlated-maximum.ts
/**
* Chance that the highest of several standard normal values, each correlated with the one before it, is at
* least `height`: Hunter's bound (1976, J. Appl. Prob. 13:597) over neighbours, P(A₁) + Σ P(Aₖ and not
* Aₖ₋₁). Never too low; close for high values, where two neighbours are all that matters.
*
* @param correlations between each value and its predecessor, one fewer than values
*/
function chanceOfMaximum(height, correlations) {
	const single = normalProbability(-height);
	const sum = correlations.reduce((total, r) => total + single - chanceOfBoth(height, r), single);
	return Math.min(1, sum);
}
/** The height that the highest of them reaches with this chance, by bisection. */
function heightOfMaximum(chance, correlations) {
	let low = -8;
	let high = 8;
	for (let i = 0; i < 40; i++) {
		const middle = (low + high) / 2;
		if (chanceOfMaximum(middle, correlations) > chance) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
/** Nodes and weights of Gauss and Legendre's rule on [-1, 1], 8 points (Abramowitz & Stegun table 25.4). */
const nodes = [
	.1834346424956498,
	.525532409916329,
	.7966664774136267,
	.9602898564975363
];
const weights = [
	.362683783378362,
	.3137066458778873,
	.2223810344533745,
	.1012285362903763
];
/**
* Chance that two standard normal values with correlation r (0 to 1) are both at least h: Plackett's
* integral, Φ(-h)² + (1/2π) ∫ exp(-h²/(1 + sin a)) da from 0 to arcsin r.
*/
function chanceOfBoth(h, r) {
	const half = Math.asin(r) / 2;
	let integral = 0;
	for (let k = 0; k < nodes.length; k++) for (const node of [nodes[k], -nodes[k]]) integral += weights[k] * Math.exp(-h * h / (1 + Math.sin(half * (1 + node))));
	return normalProbability(-h) ** 2 + half * integral / (2 * Math.PI);
}
// src/math/mean-maximal.ts
/**
* Mean-maximal power: for each duration the highest mean over all windows of that length, on the 1 s grid.
*
* A missing second counts as 0 W and windows run on clock time, across gaps and pauses: a gap can lower a
* best, never raise it, so that every best stays a lower bound on what the rider did.
*
* Exact (no subsampling of windows), from prefix sums: linear in the ride for each duration.
*
* @param power W, one value a second, NaN where missing
* @param durations s, whole and at least 1
* @param from first second looked at
* @param to second after the last one looked at
*/
function meanMaximal(power, durations, from = 0, to = power.length) {
	const first = Math.max(0, from);
	const seconds = Math.max(0, Math.min(to, power.length) - first);
	const { sums, valid } = prefixSums(power, first, seconds);
	const watts = new Float64Array(durations.length).fill(NaN);
	const starts = new Int32Array(durations.length).fill(-1);
	for (let k = 0; k < durations.length; k++) {
		const duration = durations[k];
		if (valid === 0 || duration > seconds) continue;
		let highest = -Infinity;
		let at = 0;
		for (let i = 0; i + duration <= seconds; i++) {
			const sum = sums[i + duration] - sums[i];
			if (sum > highest) {
				highest = sum;
				at = i;
			}
		}
		watts[k] = highest / duration;
		starts[k] = first + at;
	}
	return {
		watts,
		from: starts
	};
}
function prefixSums(power, first, seconds) {
	const sums = new Float64Array(seconds + 1);
	let valid = 0;
	for (let i = 0; i < seconds; i++) {
		const watts = power[first + i];
		const missing = Number.isNaN(watts);
		if (!missing) valid++;
		sums[i + 1] = sums[i] + (missing ? 0 : watts);
	}
	return {
		sums,
		valid
	};
}
// src/math/power-duration.ts
/**
* Typical fall of all-out power with duration, as a natural logarithm of watts over critical power: the
* 2-parameter model P = CP + W′/t with the loss of critical power in long efforts on top (two-parameter
* curves read 6.6 % high at an hour: MacInnis et al. 2019, IJSPP 14:38). Good from about 3 min.
*
* @param duration s
* @param reserve W′/CP, s
* @param tiring loss of critical power for each natural logarithm of time beyond a quarter of an hour
*/
function typicalFall(duration, reserve, tiring) {
	return Math.log(1 + reserve / duration) - tiring * Math.log(1 + duration / 1800);
}
// src/math/ability.ts
/** Ability is followed in steps of this many days. */
const stepDays = 15;
/**
* What past windows say of a rider's ability today, when every window is a lower bound: an all-out effort
* scatters normally around ability, any other lies anywhere between `reach` below the highest window and
* ability, all distances alike. How many were all-out is not known: each share is tried, and weighed by
* how well it explains the windows. Windows of one time share what ability has since gained or lost.
*
* With all windows all-out (share 1) and no drift this is the normal distribution's conjugate update.
*
* @param prior belief before the windows; its grid is used
*/
function abilityFrom(windows, model, prior) {
	const cut = windows.reduce((most, { value }) => Math.max(most, value), -Infinity) - model.reach;
	const used = windows.filter(({ value }) => value >= cut).sort((a, b) => b.age - a.age);
	let beliefs = model.shares.map((share) => ({
		share,
		evidence: 0,
		belief: {
			...prior,
			weights: prior.weights.slice()
		}
	}));
	let age = used[0]?.age ?? 0;
	for (const window of used) {
		if (age - window.age >= stepDays) {
			beliefs = beliefs.map((one) => ({
				...one,
				belief: blurred(one.belief, driftOver(age - window.age, model))
			}));
			age = window.age;
		}
		learn(beliefs, window, cut, model.spread);
	}
	return blurred(mixed$1(prior, beliefs), driftOver(age, model));
}
function mixed$1(grid, beliefs) {
	const best = beliefs.reduce((most, { evidence }) => Math.max(most, evidence), -Infinity);
	const weights = new Float64Array(grid.weights.length);
	for (const { belief, evidence } of beliefs) {
		const weight = Math.exp(evidence - best);
		for (let i = 0; i < weights.length; i++) weights[i] += weight * belief.weights[i];
	}
	normaliseWeights(weights);
	return {
		...grid,
		weights
	};
}
const driftOver = (days, { drift }) => drift * Math.sqrt(days / 30);
/** Multiplies every belief by the likelihood of one window, in place. */
function learn(beliefs, window, cut, spread) {
	const { first, step, weights } = beliefs[0].belief;
	for (let i = 0; i < weights.length; i++) {
		const ability = first + i * step;
		const z = (ability - window.value) / spread;
		const reached = tabledProbability(z);
		const allOut = tabledDensity(z) / spread;
		const held = reached / Math.max(ability - cut, spread / 2);
		for (const { share, belief } of beliefs) belief.weights[i] *= window.heldBack ? reached : share * allOut + (1 - share) * held;
	}
	for (const one of beliefs) one.evidence += Math.log(normaliseWeights(one.belief.weights));
}
// src/measure/rider/ability-belief.ts
/** How far above and below the highest window ability is looked for, and how finely: in spreads, and a share. */
const above = {
	spreads: 15,
	share: .1
};
const below = {
	spreads: 4,
	share: .1
};
const stepsToASpread = 3;
/**
* Belief about ln(ability) on the race day as the race's own meter would read it where the race was ridden.
* What another meter measured is off by that meter's error and by the race meter's own; what was ridden in
* the other setting, by what that may change.
*
* @param top highest window in which the rider may have gone all out
*/
function abilityBelief(groups, top, model, scatter) {
	const { spread } = model;
	const reach = (side) => side.spreads * spread + side.share;
	const grid = evenBelief(top - reach(below), top + reach(above), spread / stepsToASpread);
	const prior = fallingAbove(grid, top, scatter.shortfall);
	const own = groups.find(({ ownMeter, setting }) => ownMeter && setting === "same");
	const others = groups.filter((group) => group !== own);
	const told = [true, false].flatMap((ownMeter) => [true, false].map((same) => others.filter((g) => g.ownMeter === ownMeter && g.setting === "same" === same))).filter((group) => group.length > 0).map((group) => asRaced(group, model, own === void 0 ? prior : grid, scatter));
	const settled = blurred(combined(own === void 0 ? told : [abilityFrom(own.windows, model, prior), ...told]), scatter.betweenDurations);
	const open = scatter.heldBackUnseen > 0 ? raised(settled, scatter.heldBackUnseen) : settled;
	const swapped = blurred(open, scatter.betweenMeters * Math.SQRT2);
	return own === void 0 ? open : mixed(open, swapped, scatter.swapped);
}
/**
* What groups that differ from the race in the same respects say of it: each is off by its own meter, all
* of them together by the race's meter and by the setting.
*/
function asRaced(groups, model, start, scatter) {
	const { ownMeter, setting } = groups[0];
	const meter = ownMeter ? 0 : scatter.betweenMeters;
	return blurred(combined(groups.map(({ windows }) => blurred(abilityFrom(windows, model, start), meter))), Math.hypot(meter, setting === "same" ? 0 : scatter.betweenSettings));
}
/** Even up to `top`, falling off exponentially above it. */
function fallingAbove(grid, top, mean) {
	const weights = grid.weights.map((_, i) => Math.exp(-Math.max(0, grid.first + i * grid.step - top) / mean));
	normaliseWeights(weights);
	return {
		...grid,
		weights
	};
}
/** Independent beliefs about one number, multiplied. */
function combined(beliefs) {
	const [first, ...rest] = beliefs;
	const weights = first.weights.slice();
	for (const belief of rest) for (let i = 0; i < weights.length; i++) weights[i] *= belief.weights[i];
	normaliseWeights(weights);
	return {
		...first,
		weights
	};
}
function mixed(usual, rare, share) {
	return {
		...usual,
		weights: usual.weights.map((weight, i) => (1 - share) * weight + share * rare.weights[i])
	};
}
// src/measure/rider/past-windows.ts
/** Sorts past rides by meter and setting, each ride with its hardest window. */
function windowGroups(rides, race, kin, controlledShare) {
	const groups = /* @__PURE__ */ new Map();
	const raceMeter = meterKey(race.recording.device);
	for (const ride of rides) {
		const window = hardest(ride, race.start, kin, controlledShare);
		if (window === null) continue;
		const meter = meterKey(ride.device);
		const setting = settingOf(ride, race);
		const key = `${setting} ${meter}`;
		const group = groups.get(key) ?? {
			ownMeter: meter !== null && meter === raceMeter,
			setting,
			windows: []
		};
		group.windows.push(window);
		groups.set(key, group);
	}
	return [...groups.values()];
}
/** The window of a ride that shows most of its rider: all-out before held back, then the highest. */
function hardest(ride, raceFrom, kin, controlledShare) {
	const age = Math.max(0, (raceFrom - ride.to) / 86400);
	const controlled = (ride.controlled ?? 0) >= controlledShare;
	let best = null;
	for (const { at, shift, distance, heartRateFloor, wattsFloor } of kin) {
		const watts = ride.bests[at] ?? null;
		if (watts === null || watts <= 0) continue;
		const bpm = ride.heartRates?.[at] ?? null;
		const heldBack = controlled || watts < wattsFloor || bpm !== null && bpm < heartRateFloor;
		const value = Math.log(watts) + shift;
		if (best === null || (heldBack === best.heldBack ? value > best.value : best.heldBack && !heldBack)) best = {
			value,
			age,
			heldBack,
			distance
		};
	}
	return best;
}
function settingOf({ indoors }, race) {
	if (indoors === null || race.recording.indoors === null) return "unknown";
	return indoors === race.recording.indoors ? "same" : "other";
}
/** One name for one meter, as far as its files say so; null where they do not. */
function meterKey({ maker, product, serial }) {
	return maker === null && product === null && serial === null ? null : JSON.stringify([
		maker,
		product,
		serial
	]);
}
/** The highest reading that a history holds at one duration; 0 where it holds none. */
function highest$38(rides, at, readings) {
	return rides.reduce((top, ride) => Math.max(top, readings(ride)?.[at] ?? 0), 0);
}
// src/measure/rider/windows.ts
/**
* Mean heart rate (bpm) of the best window of power at each duration; beyond the length of the ride that of
* the longest one, 0 where it is not known.
*/
function meanWithin(power, heartRate, durations, window) {
	const best = meanMaximal(power, durations, ...window);
	let last = 0;
	return durations.map((duration, k) => {
		if (best.from[k] < 0) return last;
		last = meanKnown(heartRate.subarray(best.from[k], best.from[k] + duration));
		return last;
	});
}
function meanKnown(column) {
	const known = column.filter((value) => value > 0);
	return known.length * 2 < column.length ? 0 : known.reduce((a, b) => a + b, 0) / known.length;
}
/**
* How far the race's best mean powers stand above what the rider's past rides show that they can do: the
* percentage at the duration where honest riders would be this far above most rarely. Past bests are
* lower bounds of ability; see `abilityFrom`. The honest spread counts day-to-day variation, what is not
* known of ability, meters, and that the highest of several correlated durations is picked (Hunter 1976).
*/
const excessOverHistory = defineMeasure({
	id: "excess-over-history",
	of: "rider",
	options: {
		durations: numbers("durations compared, s, rising"),
		withinRider: numbers("SD of all-out efforts of one rider around their ability, %, for each duration"),
		betweenMeters: number$3("SD between honest meters in the field, %"),
		betweenSettings: number$3("SD between a rider’s power indoors and outdoors, %"),
		shortfall: number$3("mean by which the highest past window falls short of ability before the others are seen, %"),
		heldBackUnseen: number$3("mean by which all of them may have been held back where no heart rate tells, %"),
		swapped: number$3("share of races in which meter or calibration had changed under the same name"),
		drift: number$3("SD by which ability wanders in 30 days, %"),
		oldest: number$3("age beyond which a ride no longer counts, days"),
		reach: number$3("windows further below the highest one than this are not looked at, %"),
		near: number$3("a window within this of the highest one counts as near-maximal, %"),
		fewest: number$3("near-maximal windows at a duration without which nothing is said of it"),
		allOutShares: numbers("shares of all-out efforts among the windows in reach that are held possible"),
		allOutRatios: numbers("watts over the best at the anchor below which a window was not all-out, for each duration; 0: not judged"),
		anchor: number$3("duration of that best, s"),
		easyHeartRate: number$3("share of the highest heart rate below which a window was not all-out"),
		heartRateSlack: number$3("the same where it was this much below the heart rate of the race, %"),
		easyFrom: number$3("duration from which heart rate tells that, s"),
		controlled: number$3("share of controlled pedalling from which a ride shows what was asked, not what was possible"),
		kinReach: number$3("ratio of durations (natural logarithm) up to which windows speak for one another"),
		kinFrom: number$3("duration from which they do, s"),
		kinError: number$3("SD of the typical ratio of their powers for each natural logarithm of the ratio, %"),
		reserve: number$3("typical W′/CP, s"),
		tiring: number$3("typical loss of critical power for each natural logarithm of time, %"),
		kinship: number$3("ratio of durations (natural logarithm) at which honest bests correlate by 1/e"),
		rareness: number$3("chance at which the honest spread is taken")
	},
	compute(all, _target, options) {
		const { history } = all;
		if (history === null) return notApplicable("no-history");
		if (all.primary.channels.power === void 0) return notApplicable("no-channel", { channel: "power" });
		const rides = recent(history, all, options);
		const comparisons = compare$2(all, history, rides, options);
		if (comparisons.length === 0) return notApplicable("history-too-thin", {
			windows: Math.min(rides.length, options.fewest - 1),
			needed: options.fewest
		});
		const correlations = comparisons.slice(1).map(({ duration }, k) => {
			return Math.exp(-Math.log(duration / comparisons[k].duration) / options.kinship);
		});
		const most = comparisons.reduce((a, b) => b.height > a.height ? b : a);
		const rare = normalProbability(-heightOfMaximum(options.rareness, correlations));
		const allowed = (c) => Math.exp(valueExceeded(c.belief, rare, c.spread));
		const middle = Math.exp(beliefQuantile(most.belief, .5));
		const percent = (over) => 100 * (most.watts / over - 1);
		return measured(percent(middle), "%", [percent(Math.exp(beliefQuantile(most.belief, .975))), percent(Math.exp(beliefQuantile(most.belief, .025)))], most.near, {
			stretches: [[most.from, most.from + most.duration]],
			expected: sameFor({
				centre: 0,
				spread: 100 * (allowed(most) / middle - 1) / -normalQuantile(options.rareness)
			}),
			chance: chanceOfMaximum(most.height, correlations),
			details: {
				duration: lengthOf(most.duration),
				watts: watts$1(most.watts),
				best: watts$1(most.best),
				ability: watts$1(middle),
				allowed: watts$1(allowed(most)),
				rides: rides.length,
				windows: most.near,
				oneIn: oneIn$1(chanceOfMaximum(most.height, correlations))
			},
			charts: [curve$2(all, history, rides, new Map(comparisons.map((c) => [c.duration, allowed(c)])))]
		});
	}
});
/** A chance as "1 in": two digits are more than it is known to. */
function oneIn$1(chance) {
	return Math.min(1e5, Number((1 / chance).toPrecision(2)));
}
const watts$1 = (value) => ({
	value,
	unit: "W"
});
const lengthOf = (seconds) => seconds < 120 ? {
	value: seconds,
	unit: "s"
} : {
	value: seconds / 60,
	unit: "min"
};
const sameFor = (range) => ({
	declared: range,
	field: range
});
function recent({ rides }, { primary }, { oldest }) {
	return rides.filter((ride) => primary.start - ride.to <= oldest * 86400);
}
function compare$2(all, history, rides, options) {
	const race = meanMaximal(all.primary.channels.power, options.durations, ...all.window);
	const durations = history.profile.durations;
	const floors = floorsOf(all, durations, rides, options);
	return options.durations.flatMap((duration, k) => {
		const watts = race.watts[k];
		if (!(watts > 0)) return [];
		const kin = kinOf(k, durations, floors, options);
		const groups = windowGroups(rides, all.primary, kin, options.controlled);
		const { top, near, distance } = nearMaximal(groups, options);
		if (near < options.fewest) return [];
		const spread = options.withinRider[k] / 100;
		const model = {
			spread,
			drift: options.drift / 100,
			reach: options.reach / 100,
			shares: options.allOutShares
		};
		const seen = floors.heartRates !== null && duration >= options.kinFrom;
		const belief = abilityBelief(groups, top, model, {
			betweenMeters: options.betweenMeters / 100,
			betweenSettings: options.betweenSettings / 100,
			betweenDurations: distance * options.kinError / 100,
			shortfall: options.shortfall / 100,
			heldBackUnseen: seen ? 0 : options.heldBackUnseen / 100,
			swapped: options.swapped
		});
		const chance = chanceAbove(belief, Math.log(watts), spread);
		const height = -normalQuantile(Math.min(1 - leastChance, Math.max(leastChance, chance)));
		const best = highest$38(rides, durations.indexOf(duration), (ride) => ride.bests);
		return [{
			duration,
			watts,
			from: race.from[k],
			best,
			near,
			belief,
			spread,
			height
		}];
	});
}
/**
* Heart rate tells held-back windows: far below the highest that was ever held, or below that of the race
* over the same duration.
*/
function floorsOf(all, durations, rides, options) {
	const anchorAt = durations.indexOf(options.anchor);
	const { power, heartRate } = all.primary.channels;
	const race = heartRate === void 0 ? durations.map(() => 0) : meanWithin(power, heartRate, durations, all.window);
	const highestHeld = Math.max(highest$38(rides, anchorAt, (ride) => ride.heartRates), race[anchorAt] ?? 0);
	return {
		anchorWatts: highest$38(rides, anchorAt, (ride) => ride.bests),
		heartRates: highestHeld === 0 ? null : race.map((bpm) => Math.max(options.easyHeartRate * highestHeld, (1 - options.heartRateSlack / 100) * bpm))
	};
}
/** The durations of the profile whose windows speak for the k-th duration asked about. */
function kinOf(k, durations, floors, options) {
	const { reserve, tiring, kinFrom, kinReach, easyFrom, allOutRatios } = options;
	const duration = options.durations[k];
	const fall = (seconds) => typicalFall(seconds, reserve, tiring / 100);
	return durations.flatMap((other, at) => {
		const distance = Math.abs(Math.log(other / duration));
		if (other !== duration && !(other >= kinFrom && duration >= kinFrom && distance <= kinReach)) return [];
		return [{
			at,
			shift: fall(duration) - fall(other),
			distance,
			heartRateFloor: other >= easyFrom ? floors.heartRates?.[at] ?? 0 : 0,
			wattsFloor: allOutRatios[k] * floors.anchorWatts
		}];
	});
}
/** Chances beyond what the belief's grid can tell are not told apart. */
const leastChance = 1e-9;
/**
* The highest window of the race's setting in which the rider may have gone all out, how many lie near it,
* and from how far durations they come.
*/
function nearMaximal(groups, { near }) {
	const windows = groups.flatMap((group) => group.setting === "other" ? [] : group.windows.filter((w) => !w.heldBack));
	const top = windows.reduce((most, { value }) => Math.max(most, value), -Infinity);
	const close = windows.filter(({ value }) => value >= top - near / 100);
	const distance = close.reduce((sum, window) => sum + window.distance, 0) / close.length;
	return {
		top,
		near: close.length,
		distance
	};
}
/** The race and the history at every duration of the profile, with what the history allows where it says. */
function curve$2({ primary, window }, { profile }, rides, allowed) {
	const race = meanMaximal(primary.channels.power, profile.durations, ...window);
	return {
		kind: "curve",
		id: "curve:rider",
		points: profile.durations.map((duration, k) => ({
			duration,
			race: Number.isNaN(race.watts[k]) ? null : race.watts[k],
			best: rides.reduce((most, { bests }) => bests[k] == null ? most : Math.max(most ?? 0, bests[k]), null),
			allowed: allowed.get(duration) ?? null
		})).filter(({ race }) => race !== null)
	};
}
// src/measure/rider/records.ts
/**
* Highest mean power of people, W/kg: seconds, then watts. Top of the table in Allen, Coggan & McGregor,
* "Training and Racing with a Power Meter", 3rd edition, whose last column (threshold) stands for an hour.
*/
const records = {
	open: [
		[5, 25.18],
		[60, 11.5],
		[300, 7.6],
		[3600, 6.4]
	],
	women: [
		[5, 19.42],
		[60, 9.29],
		[300, 6.74],
		[3600, 5.69]
	]
};
/** The record for a duration (5 s to an hour, W/kg), straight on logarithmic axes between the published ones. */
function recordPower(seconds, recordClass) {
	const points = records[recordClass];
	const next = points.findIndex(([duration]) => duration >= seconds);
	const [high, low] = [points[Math.max(1, next)], points[Math.max(1, next) - 1]];
	const share = Math.log(seconds / low[0]) / Math.log(high[0] / low[0]);
	return low[1] * (high[1] / low[1]) ** share;
}
// src/measure/excess-over-record.ts
/**
* How far the race's best mean power per kilogram stands above the highest that is published for people,
* in percent, at the duration where it stands highest. Between published durations the record runs
* straight on logarithmic axes. The honest spread is that of meters and scales.
*/
const excessOverRecord = defineMeasure({
	id: "excess-over-record",
	of: "recording",
	options: {
		durations: numbers("durations compared, s"),
		fieldSpread: number$3("SD of meters as found in the field, %"),
		massSpread: number$3("SD of a stated body mass, %")
	},
	compute(all, series, options) {
		const { power } = series.channels;
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		const { massKg, recordClass = "open", devices } = all.rider;
		if (massKg === void 0) return notApplicable("no-fact", { fact: "massKg" });
		const best = meanMaximal(power, options.durations, ...all.window);
		const compared = options.durations.flatMap((duration, k) => {
			const perKg = best.watts[k] / massKg;
			const record = recordPower(duration, recordClass);
			return Number.isNaN(perKg) ? [] : [{
				duration,
				perKg,
				record,
				from: best.from[k]
			}];
		});
		if (compared.length === 0) return notApplicable("no-power-flow");
		const most = compared.reduce((a, b) => b.perKg / b.record > a.perKg / a.record ? b : a);
		const own = declaredFor(devices, series.recording.name, "primary");
		const spread = (meter) => ({
			centre: 0,
			spread: Math.hypot(meter, options.massSpread)
		});
		return exact(100 * (most.perKg / most.record - 1), "%", compared.length, {
			stretches: [[most.from, most.from + most.duration]],
			expected: {
				declared: spread(claimed(own, options.fieldSpread)),
				field: spread(options.fieldSpread)
			},
			details: {
				duration: most.duration < 120 ? {
					value: most.duration,
					unit: "s"
				} : {
					value: most.duration / 60,
					unit: "min"
				},
				perKg: {
					value: most.perKg,
					unit: "W/kg"
				},
				record: {
					value: most.record,
					unit: "W/kg"
				},
				class: recordClass
			}
		});
	}
});
/** A tolerance of ±a as a standard deviation: a/√3 (JCGM 100:2008, GUM); the field's without a claim. */
function claimed(device, fieldSpread) {
	return device === null ? fieldSpread : device.tolerancePercent / Math.sqrt(3);
}
// src/measure/flat-power-share.ts
/**
* Share of the pedalling that keeps to a level more closely than legs can: records inside a window of
* records with next to no spread. An exact count; what a recorder left out counts with the record before.
*/
const flatPowerShare = defineMeasure({
	id: "flat-power-share",
	of: "recording",
	options: {
		windowSeconds: number$3("shortest time that a level lasts, s"),
		fewestRecords: number$3("and the fewest records it holds, for recorders that leave seconds out"),
		spreadWatts: number$3("standard deviation up to which power counts as standing still, W"),
		stepWatts: number$3("change from the level that begins another one, W"),
		minimumWatts: number$3("power from which a second counts, W: lower down, legs are steady too"),
		minimumSeconds: number$3("seconds at such power below which nothing is said")
	},
	circumstances: { workout: "the ride was a workout, in which a trainer may hold a target" },
	compute(all, recording, options) {
		const records = recordsOf(recording);
		if (records === null) return notApplicable("no-channel", { channel: "power" });
		let seconds = 0;
		const power = records.power.map((watts, i) => {
			if (!(watts >= options.minimumWatts)) return NaN;
			seconds += secondsOf(records, i);
			return watts;
		});
		if (seconds < options.minimumSeconds) return notApplicable("too-short", {
			seconds,
			needed: options.minimumSeconds
		});
		const usable = power.reduce((sum, watts) => Number.isNaN(watts) ? sum : sum + 1, 0);
		const inWindow = Math.round(options.windowSeconds * usable / seconds);
		const plateaus = plateausOf(records, power, inSteadyWindow(power, Math.max(options.fewestRecords, inWindow), options.spreadWatts), options.stepWatts);
		const lengths = plateaus.map(({ stretch: [from, to] }) => to - from);
		const total = lengths.reduce((sum, length) => sum + length, 0);
		return exact(total / seconds, "share", seconds, {
			stretches: plateaus.map(({ stretch }) => stretch),
			circumstances: all.race.kind === "workout" ? ["workout"] : [],
			details: {
				plateaus: plateaus.length,
				levels: new Set(plateaus.map(({ watts }) => Math.round(watts))).size,
				flat: {
					value: total,
					unit: "s"
				},
				longest: {
					value: Math.max(0, ...lengths),
					unit: "s"
				},
				from: {
					value: options.minimumWatts,
					unit: "W"
				}
			},
			charts: plateaus.length === 0 ? [] : [chart$2(`plateaus:${subjectOf(all, recording)}`, recording.channels.power, plateaus)]
		});
	}
});
/** Flat records joined into plateaus, cut where recording broke off or one level steps to the next. */
function plateausOf(records, power, flat, step) {
	const plateaus = [];
	let from = -1;
	let sum = 0;
	const close = (to) => {
		if (from < 0) return;
		const stretch = [records.at[from], records.at[to - 1] + secondsOf(records, to - 1)];
		plateaus.push({
			stretch,
			watts: sum / (to - from)
		});
		from = -1;
	};
	for (let i = 0; i < flat.length; i++) {
		const cut = records.broken[i] === 1 || Math.abs(power[i] - sum / (i - from)) > step;
		if (flat[i] === 0 || cut) close(i);
		if (flat[i] === 0) continue;
		if (from < 0) {
			from = i;
			sum = 0;
		}
		sum += power[i];
	}
	close(flat.length);
	return plateaus;
}
function chart$2(id, power, plateaus) {
	return {
		kind: "plateaus",
		id,
		power: readings$1(power, 0, power.length),
		plateaus: plateaus.map(({ stretch, watts }) => ({
			stretch,
			watts: Math.round(watts * 10) / 10
		}))
	};
}
// src/math/stretches.ts
/**
* The maximal stretches of `[from, to)` in which `holds` is true, at least `shortest` long; gaps of up
* to `bridge` in between are joined over.
*/
function stretchesWhere(from, to, holds, shortest = 1, bridge = 0) {
	const found = [];
	let start = -1;
	let last = -1;
	for (let i = from; i <= to; i++) if (i < to && holds(i)) {
		if (start < 0) start = i;
		last = i;
	} else if (start >= 0 && (i === to || i - last > bridge)) {
		if (last + 1 - start >= shortest) found.push([start, last + 1]);
		start = -1;
	}
	return found;
}
/** Summed length of stretches that do not overlap. */
function totalLength(stretches) {
	let total = 0;
	for (const [from, to] of stretches) total += to - from;
	return total;
}
/** The longest stretch's length, 0 where there is none. */
function longestLength(stretches) {
	let longest = 0;
	for (const [from, to] of stretches) longest = Math.max(longest, to - from);
	return longest;
}
// src/measure/frozen-seconds.ts
/**
* Seconds in which power or cadence repeats a value for longer than it can while another channel moves: an
* exact count, each channel with its own shortest time. (Heart rate is asked about by its own rule.)
*/
const frozenSeconds = defineMeasure({
	id: "frozen-seconds",
	of: "recording",
	options: {
		powerSeconds: number$3("shortest time that power must repeat, s"),
		cadenceSeconds: number$3("shortest time that cadence must repeat, s"),
		adjoiningSeconds: number$3("repeated power this close to the next repeated power steps from target to target, s"),
		targetShare: number$3("share of such steps among the stretches of power from which it looks like a target")
	},
	circumstances: { "target levels": "power steps from one repeated level straight to the next" },
	compute(all, recording, options) {
		const { power, cadence } = recording.channels;
		if (power === void 0 && cadence === void 0) return notApplicable("no-channel", { channel: "power" });
		const inPower = power === void 0 ? [] : frozenIn(recording, power, options.powerSeconds);
		const inCadence = cadence === void 0 ? [] : frozenIn(recording, cadence, options.cadenceSeconds);
		const stretches = [...inPower, ...inCadence].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
		const steps = inPower.filter(([from], k) => k > 0 && from - inPower[k - 1][1] <= options.adjoiningSeconds).length;
		return exact(totalLength(stretches), "s", recording.length, {
			stretches,
			circumstances: steps > options.targetShare * inPower.length ? ["target levels"] : [],
			details: {
				channel: totalLength(inCadence) > totalLength(inPower) ? "cadence" : "power",
				stretches: stretches.length,
				longest: {
					value: longestLength(stretches),
					unit: "s"
				}
			},
			charts: stretches.length === 0 ? [] : [closeUps$1(`frozen:${subjectOf(all, recording)}`, recording, stretches)]
		});
	}
});
/** Stretches of one repeated value above zero, while another channel takes more than one value. */
function frozenIn({ channels, state, length }, column, shortest) {
	const others = [
		channels.power,
		channels.cadence,
		channels.heartRate,
		channels.speed
	].filter((other) => other !== void 0 && other !== column);
	const found = [];
	for (let from = 0, to = 1; from < length; from = to++) {
		const value = column[from];
		if (!(value > 0) || state[from] !== SecondState.recorded) continue;
		while (to < length && column[to] === value && state[to] === SecondState.recorded) to++;
		if (to - from >= shortest && others.some((other) => moves(other, from, to))) found.push([from, to]);
	}
	return found;
}
function moves(column, from, to) {
	for (let i = from + 1; i < to; i++) {
		const change = column[i] - column[i - 1];
		if (change !== 0 && !Number.isNaN(change)) return true;
	}
	return false;
}
// src/math/first-order.ts
/**
* Answer of a first-order system with unit gain to a signal of one value a second: the step response is
* 1 - exp(-t/tau). It starts settled at the first known value; across unknown seconds it stays as it is.
*
* @param tau time constant, s
*/
function firstOrder(signal, tau) {
	const keep = Math.exp(-1 / tau);
	const answer = new Float64Array(signal.length);
	let state = signal.find((value) => !Number.isNaN(value)) ?? NaN;
	for (let i = 0; i < signal.length; i++) {
		const value = signal[i];
		if (!Number.isNaN(value)) state = state * keep + value * (1 - keep);
		answer[i] = state;
	}
	return answer;
}
// src/measure/rider/heart-blocks.ts
/** Share of a block's seconds that must have both readings. */
const leastKnown = .75;
/** Means of whole blocks in which both power and heart rate are known for most of the seconds. */
function heartBlocks(power, followed, heartRate, [from, to], seconds) {
	const most = Math.max(0, Math.floor((to - from) / seconds));
	const columns = [
		0,
		1,
		2,
		3
	].map(() => new Float64Array(most));
	let count = 0;
	for (let start = from; start + seconds <= to; start += seconds) {
		const sums = [
			0,
			0,
			0
		];
		let known = 0;
		for (let i = start; i < start + seconds; i++) {
			if (Number.isNaN(power[i] + heartRate[i])) continue;
			known++;
			sums[0] += power[i];
			sums[1] += followed[i];
			sums[2] += heartRate[i];
		}
		if (known < leastKnown * seconds) continue;
		columns[0][count] = start + seconds / 2;
		for (let k = 0; k < 3; k++) columns[k + 1][count] = sums[k] / known;
		count++;
	}
	const [at, watts, followedMeans, heartRates] = columns.map((column) => column.slice(0, count));
	return {
		at,
		watts,
		followed: followedMeans,
		heartRate: heartRates
	};
}
/** Share of the blocks of the last third whose power also occurs in the first third (0–1). */
function sharedPower({ followed }) {
	const third = Math.floor(followed.length / 3);
	const early = followed.subarray(0, third);
	const late = followed.subarray(followed.length - third);
	const lowest = early.reduce((a, b) => Math.min(a, b), Infinity);
	const highest = early.reduce((a, b) => Math.max(a, b), -Infinity);
	return late.filter((watts) => watts >= lowest && watts <= highest).length / third;
}
// src/measure/rider/heart-rate.ts
/** Lowest and highest heart rate of a living rider, bpm. */
const slowest = 30;
const fastest = 230;
/** Sorts out where the heart rate channel shows something other than the heart. */
function heartRateFaults({ channels, length, state }, limits) {
	const { heartRate, cadence } = channels;
	if (heartRate === void 0) return {
		missing: [[0, length]],
		stuck: [],
		cadence: []
	};
	const plausible = (i) => heartRate[i] >= slowest && heartRate[i] <= fastest;
	const missing = stretchesWhere(0, length, (i) => !plausible(i) && state[i] !== SecondState.paused);
	const held = (i) => plausible(i) && heartRate[i] === heartRate[i - 1];
	return {
		missing,
		stuck: stretchesWhere(1, length, held, limits.stuckSeconds - 1).map(([from, to]) => [from - 1, to]),
		cadence: followsCadence()
	};
	function followsCadence() {
		if (cadence === void 0) return [];
		const near = (i) => {
			const turns = cadence[i];
			if (!(turns > 0) || !plausible(i)) return false;
			return [
				turns / 2,
				turns,
				2 * turns
			].some((beat) => Math.abs(heartRate[i] - beat) <= limits.cadenceBeats);
		};
		return stretchesWhere(0, length, near, limits.cadenceSeconds, 3);
	}
}
/** Heart rate with everything else masked out as NaN. */
function cleanHeartRate(series, faults) {
	const clean = series.channels.heartRate.slice();
	for (const [from, to] of [
		...faults.missing,
		...faults.stuck,
		...faults.cadence
	]) clean.fill(NaN, from, to);
	return clean;
}
// src/measure/late-power-excess.ts
/**
* How many more watts the meter shows at the end of the race than at its start for the same heart rate,
* in percent of the mean power: heart rate is fitted on power as the heart follows it (first order) and on
* time. Honest riders drift the other way: heart rate rises at equal power (Coyle & González-Alonso 2001).
*/
const latePowerExcess = defineMeasure({
	id: "late-power-excess",
	of: "recording",
	options: {
		leadSeconds: number$3("beginning of the race that is left out, s"),
		finalSeconds: number$3("end of the race that is left out, with its sprint, s"),
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks"),
		timeConstants: numbers("time constants tried for the answer of the heart, s"),
		capShare: number$3("power above this many times the best of the cap’s duration does not show in heart rate"),
		capSeconds: number$3("that duration, s"),
		usualPerHour: number$3("what honest riders show for each hour of the race, %"),
		usualSpread: number$3("SD of that, %"),
		otherSpread: number$3("SD of what does not grow with time, %"),
		leastGain: number$3("answer of the heart to power below which it cannot be judged, standard errors"),
		mostInflation: number$3("variance inflation above which time cannot be told from power"),
		leastShared: number$3("share of late blocks whose power must occur early as well"),
		stuckSeconds: number$3("one heart rate for this long counts as stuck, s"),
		cadenceBeats: number$3("heart rate this close to the cadence … (bpm)"),
		cadenceSeconds: number$3("… for this long counts as the cadence, s")
	},
	compute(all, series, options) {
		const { power, heartRate } = series.channels;
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		if (heartRate === void 0) return notApplicable("no-channel", { channel: "heartRate" });
		const stretch = [all.window[0] + options.leadSeconds, all.window[1] - options.finalSeconds];
		const needed = options.leastBlocks;
		const clean = cleanHeartRate(series, heartRateFaults(series, options));
		const felt = capped(power, all.window, options);
		const tried = options.timeConstants.map((tau) => heartBlocks(power, firstOrder(felt, tau), clean, stretch, options.blockSeconds));
		const count = tried[0]?.at.length ?? 0;
		if (count < needed) return notApplicable("too-few-blocks", {
			blocks: count,
			needed
		});
		const best = closest(tried);
		if (best === null) return notApplicable("cannot-separate");
		const { fit, blocks } = best;
		if (fit.coefficients[1] < options.leastGain * fit.errors[1]) return notApplicable("no-heart-rate-range");
		if (sharedPower(blocks) < options.leastShared) return notApplicable("no-overlap-of-power");
		if (fit.inflation[1] > options.mostInflation) return notApplicable("cannot-separate");
		return describe$2(blocks, fit, all.window, options, `late-power:${subjectOf(all, series)}`);
	}
});
/** Power without what the heart does not answer to: sprints are ridden on other reserves. */
function capped(power, window, { capShare, capSeconds }) {
	const best = meanMaximal(power, [Math.min(capSeconds, window[1] - window[0])], ...window).watts[0];
	return power.map((watts) => Math.min(watts, capShare * best));
}
/** The time constant whose plain fit leaves least over, fitted again so that single bad blocks cannot turn it. */
function closest(tried) {
	let best = null;
	let least = Infinity;
	for (const blocks of tried) {
		const fit = leastSquares([ones(blocks), ...regressors(blocks)], blocks.heartRate);
		if (fit === null) continue;
		const left = fit.residuals.reduce((sum, residual) => sum + residual ** 2, 0);
		if (left < least) {
			least = left;
			best = blocks;
		}
	}
	const fit = best === null ? null : robustFit(regressors(best), best.heartRate);
	return best === null || fit === null ? null : {
		blocks: best,
		fit
	};
}
const ones = ({ at }) => new Float64Array(at.length).fill(1);
const regressors = ({ followed, at }) => [followed, at];
function describe$2(blocks, fit, [from, to], usual, id) {
	const [, gain, slope] = fit.coefficients;
	const [, gainError, slopeError] = fit.errors;
	const mean = blocks.watts.reduce((a, b) => a + b, 0) / blocks.watts.length;
	const watts = -slope * (to - from) / gain;
	const error = Math.hypot(slopeError * (to - from) / gain, watts * gainError / gain);
	const percent = (value) => 100 * value / mean;
	const hours = (to - from) / 3600;
	const honest = {
		centre: usual.usualPerHour * hours,
		spread: Math.hypot(percent(error), usual.usualSpread * hours, usual.otherSpread)
	};
	return measured(percent(watts), "%", [percent(watts - fit.reach * error), percent(watts + fit.reach * error)], blocks.at.length, {
		stretches: [[from, to]],
		expected: {
			declared: honest,
			field: honest
		},
		details: {
			watts: {
				value: watts,
				unit: "W"
			},
			mean: {
				value: mean,
				unit: "W"
			},
			minutes: {
				value: (to - from) / 60,
				unit: "min"
			},
			usual: {
				value: honest.centre,
				unit: "%"
			}
		},
		charts: [response$1(id, blocks, fit, (from + to) / 2)]
	});
}
function response$1(id, blocks, { coefficients }, middle) {
	const [start, gain, slope] = coefficients;
	return {
		kind: "response",
		id,
		blocks: Array.from(blocks.at, (at, i) => ({
			at,
			watts: blocks.watts[i],
			heartRate: blocks.heartRate[i],
			predicted: start + gain * blocks.followed[i] + slope * middle
		}))
	};
}
// src/math/lattice.ts
/** Lets a product that is a half in decimals count as one, whatever binary makes of the factor. */
const slack = 1e-9;
/**
* Writes into `bins` the comb that a factor leaves in whole numbers up to `most`. Above 1: the numbers that
* whole numbers times the factor never reach, a share of 1 - 1/factor of all. Between 0.5 and 1: those that
* they reach twice, a share of 1/factor - 1.
*
* @returns how many there are; what `bins` cannot hold is left out
*/
function writeComb(factor, most, rounding, bins) {
	const step = Math.abs(factor - 1);
	const shift = rounding === "nearest" ? .5 : 0;
	let count = 0;
	for (let j = 1; count < bins.length; j++) {
		const bin = factor > 1 ? Math.ceil((j - shift) / step - slack) + j - 1 : Math.floor((j - 1 + shift) / step + slack) + 1 - j;
		if (bin > most) break;
		bins[count++] = bin;
	}
	return count;
}
/** The same comb as a list. */
function combOf(factor, most, rounding = "nearest") {
	const bins = new Int32Array(Math.max(0, most) + 1);
	return Array.from(bins.subarray(0, writeComb(factor, most, rounding, bins)));
}
// src/measure/recording/lattice.ts
/**
* Looks for a comb in whole watts: places that a factor above 1 leaves empty, or that one below 1 fills
* twice. At each place the count h stands against the height λ of its flanks, or, where these differ by more
* than counting allows, of the one that speaks against a comb: so slopes and edges of an honest histogram
* never look like one. The log-likelihood of a comb over none is Σ h·ln ε + (1 - ε)·λ, or Σ h·ln 2 - λ; by
* Markov's inequality one among T alternatives exceeds x by chance with probability below T·exp(-x), so
* nothing need be resampled.
*
* @param watts one whole number a sample, without immediate repeats
*/
function findLattice(watts, search) {
	const most = quantile(watts, search.commonShare);
	const whole = new Histogram(watts, 0, watts.length, most, search);
	const { combs, tried } = firstLook(whole, search);
	let best = null;
	for (const comb of combs) {
		const placed = place(watts, whole, comb, search);
		if (placed !== null && (best === null || placed.gain > best.gain)) best = placed;
	}
	return best === null ? null : refine(watts, whole, best, tried, search);
}
/** Watts that this share of the samples does not exceed. */
function quantile(watts, share) {
	let most = 0;
	for (let i = 0; i < watts.length; i++) if (watts[i] > most) most = watts[i];
	const counts = new Int32Array(most + 1);
	for (let i = 0; i < watts.length; i++) counts[watts[i]]++;
	let below = 0;
	for (let k = 0; k < most; k++) {
		below += counts[k];
		if (below >= share * watts.length) return k;
	}
	return most;
}
/** Counts of whole watts, with what the flanks of each lead to expect: cautiously low, cautiously high. */
var Histogram = class {
	most;
	counts;
	low;
	high;
	places;
	stray;
	constructor(watts, from, to, most, search) {
		const flank = search.flankWatts;
		const counts = new Float64Array(most + 2 + flank);
		for (let i = from; i < to; i++) if (watts[i] < counts.length) counts[watts[i]]++;
		this.most = most;
		this.stray = search.strayShare;
		this.counts = counts;
		this.low = new Float64Array(most + 1);
		this.high = new Float64Array(most + 1);
		this.places = new Int32Array(most + 1);
		let left = 0;
		let right = 0;
		for (let k = 1; k <= flank; k++) right += counts[k] ?? 0;
		for (let k = 0; k <= most; k++) {
			const agree = Math.abs(left - right) <= 2 * Math.sqrt(left + right);
			this.low[k] = (agree ? (left + right) / 2 : Math.min(left, right)) / flank;
			this.high[k] = (agree ? (left + right) / 2 : Math.max(left, right)) / flank;
			left += counts[k] - (k >= flank ? counts[k - flank] : 0);
			right += counts[k + 1 + flank] - counts[k + 1];
		}
	}
	/** The comb's places up to the highest watts looked at; overwritten by the next call. */
	placesOf({ factor, rounding }) {
		return this.places.subarray(0, writeComb(factor, this.most, rounding, this.places));
	}
	/** Counts at the comb's places and what the flanks lead to expect there. */
	sumsAt(comb) {
		const due = comb.factor > 1 ? this.low : this.high;
		const { places, counts } = this;
		const number = writeComb(comb.factor, this.most, comb.rounding, places);
		let counted = 0;
		let expected = 0;
		for (let i = 0; i < number; i++) {
			const k = places[i];
			counted += counts[k];
			expected += due[k];
		}
		return {
			counted,
			expected
		};
	}
	/** Log-likelihood of the comb over none, and the part of it that its best place adds. */
	gainAt(comb) {
		const up = comb.factor > 1;
		let gain = 0;
		let greatest = 0;
		for (const k of this.placesOf(comb)) {
			const due = up ? this.low[k] : this.high[k];
			const count = up ? this.counts[k] : Math.min(this.counts[k], 2 * due + 3 * Math.sqrt(2 * due));
			const here = up ? count * Math.log(this.stray) + (1 - this.stray) * due : count * Math.LN2 - due;
			gain += here;
			if (here > greatest) greatest = here;
		}
		return {
			gain,
			greatest
		};
	}
};
/** Combs that stand out of the whole recording (few counts where some are due, or many), and all tried. */
function firstLook(whole, search) {
	const found = [];
	const ratio = 1 + search.stepWatts / whole.most;
	let tried = 0;
	const look = (factor, rounding) => {
		const comb = {
			factor,
			rounding
		};
		const { counted, expected } = whole.sumsAt(comb);
		const score = (factor > 1 ? expected - counted : counted - expected) / Math.sqrt(expected + 1);
		if (score >= search.firstLook) found.push({
			comb,
			score
		});
		tried++;
	};
	for (const [direction, furthest] of [[1, search.greatestFactor - 1], [-1, 1 - search.leastFactor]]) for (let step = search.blindShare; step <= furthest; step *= ratio) {
		look(1 + direction * step, "nearest");
		if (direction > 0) look(1 + direction * step, "down");
	}
	found.sort((a, b) => b.score - a.score);
	const combs = [];
	for (const { comb } of found) {
		if (combs.length === search.candidates) break;
		if (!combs.some((other) => neighbours(comb, other, ratio))) combs.push(comb);
	}
	return {
		combs,
		tried
	};
}
/** Whether one of the two factors is only a few steps of the grid beside the other. */
function neighbours(a, b, ratio) {
	const apart = Math.log((a.factor - 1) / (b.factor - 1));
	return a.rounding === b.rounding && Math.abs(apart) < 3 * Math.log(ratio);
}
/**
* Whether the samples outside the lattice's stretch are no part of it: enough of them are due at its places,
* and they speak against it by more than the choice of the best stretch alone would make them.
*
* @param due counts expected at its places, at least
* @param loss log-likelihood against it, at least
*/
function isPart(watts, lattice, due, loss, search) {
	const outside = new Int32Array(watts.length - (lattice.to - lattice.from));
	outside.set(watts.subarray(0, lattice.from));
	outside.set(watts.subarray(lattice.to), lattice.from);
	const most = quantile(watts, search.commonShare);
	const histogram = new Histogram(outside, 0, outside.length, most, search);
	return histogram.sumsAt(lattice).expected >= due && histogram.gainAt(lattice).gain <= -loss;
}
/** Share of the watts never recorded, among those that their flanks lead to expect several times. */
function neverRecorded(watts, due, search) {
	const most = quantile(watts, search.commonShare);
	const histogram = new Histogram(watts, 0, watts.length, most, search);
	let looked = 0;
	let empty = 0;
	for (let k = 0; k <= most; k++) {
		if (histogram.low[k] < due) continue;
		looked++;
		if (histogram.counts[k] === 0) empty++;
	}
	return looked === 0 ? 0 : empty / looked;
}
/** Counts of each watt up to the highest looked at, and what its flanks lead to expect. */
function countsOf(watts, search) {
	const most = quantile(watts, search.commonShare);
	const { counts, low } = new Histogram(watts, 0, watts.length, most, search);
	return {
		counts: counts.subarray(0, most + 1),
		expected: low
	};
}
/** The stretch of samples in which a comb gains most: the greatest sum of a run, in one pass. */
function place(watts, whole, comb, search) {
	const inComb = new Uint8Array(whole.counts.length);
	for (const k of whole.placesOf(comb)) inComb[k] = 1;
	const credit = whole.sumsAt(comb).expected / watts.length;
	const up = comb.factor > 1;
	const hit = up ? Math.log(search.strayShare) : Math.LN2;
	const miss = up ? (1 - search.strayShare) * credit : -credit;
	let sum = 0;
	let start = 0;
	let best = 0;
	let from = 0;
	let to = 0;
	for (let i = 0; i < watts.length; i++) {
		if (sum <= 0) {
			sum = 0;
			start = i;
		}
		sum += inComb[watts[i]] === 1 ? hit : miss;
		if (sum > best) {
			best = sum;
			from = start;
			to = i + 1;
		}
	}
	if (to === from) return null;
	const { gain } = new Histogram(watts, from, to, whole.most, search).gainAt(comb);
	return {
		...comb,
		from,
		to,
		gain
	};
}
/** The best factor on a finer grid, its range, and the gain that stands without the best place. */
function refine(watts, whole, start, tried, search) {
	const { from, to, rounding } = start;
	const part = new Histogram(watts, from, to, whole.most, search);
	const width = 4 / whole.most;
	const steps = 128;
	const gains = [];
	for (let k = -128; k <= steps; k++) {
		const factor = 1 + (start.factor - 1) * (1 + width * k / steps);
		gains.push([factor, part.gainAt({
			factor,
			rounding
		}).gain]);
	}
	const most = gains.reduce((a, b) => b[1] > a[1] ? b : a);
	const near = gains.filter(([, gain]) => gain >= most[1] - 1.92).map(([factor]) => factor);
	const low = Math.min(...near);
	const high = Math.max(...near);
	const best = {
		factor: most[0],
		rounding
	};
	const { gain, greatest } = part.gainAt(best);
	const stretches = Math.max(1, whole.sumsAt(best).expected) ** 2;
	return {
		...best,
		low,
		high,
		from,
		to,
		gain: gain - greatest,
		logTried: Math.log(tried * stretches),
		...part.sumsAt(best)
	};
}
// src/measure/lattice-excess.ts
/**
* By how many percent whole watts look multiplied: the factor whose comb the histogram of power shows, with
* the range of factors that explain it as well; 0 where no comb goes beyond chance. Blind to factors within
* `blindShare` of 1, to decimals, and to what was smoothed after multiplying.
*/
const latticeExcess = defineMeasure({
	id: "lattice-excess",
	of: "recording",
	options: {
		leastFactor: number$3("smallest factor looked for"),
		greatestFactor: number$3("greatest factor looked for"),
		blindShare: number$3("factors nearer to 1 than this are not looked for"),
		stepWatts: number$3("how far the far end of the comb moves from one factor tried to the next, W"),
		strayShare: number$3("share of samples that may miss the comb"),
		flankWatts: number$3("watts on either side that say how often a watt is due, W"),
		commonShare: number$3("share of the samples up to whose watts a comb is looked for"),
		firstLook: number$3("standard deviations from which the stretches of a comb are looked at"),
		candidates: number$3("how many combs are looked at so"),
		chance: number$3("probability of such a comb by chance, above which it counts for nothing"),
		fromWatts: number$3("power from which samples count, W"),
		minimumSamples: number$3("such samples below which nothing is said"),
		wholeShare: number$3("share of the samples on whole watts below which power counts as decimal"),
		steadySamples: number$3("length of a window that may stand still, samples"),
		steadyWatts: number$3("standard deviation up to which it does and is left out, W"),
		dueCounts: number$3("counts that its flanks must lead to expect of a watt before its absence tells anything"),
		coarseShare: number$3("share of never recorded watts from which the meter counts as working in coarse steps"),
		outsideExpected: number$3("counts due at the comb outside the stretch that can tell a part from the whole"),
		outsideLoss: number$3("log-likelihood by which these must speak against the comb")
	},
	circumstances: {
		throughout: "the comb runs through the whole recording: a meter that works in coarse steps makes the same one",
		lowered: "the factor is below 1: such a change only lowers the power",
		"coarse steps": "so many watts never occur that the meter must work in coarse steps, which would hide a factor"
	},
	compute(all, recording, options) {
		const samples = samplesOf(all, recording);
		if (samples === null) return notApplicable("no-channel", { channel: "power" });
		const { whole, valid, used } = wholeWatts(samples.power, options);
		if (valid > 0 && whole < options.wholeShare * valid) return notApplicable("decimal-power", { share: 1 - whole / valid });
		const watts = used.map((i) => samples.power[i]);
		if (watts.length < options.minimumSamples) return notApplicable("too-short", {
			seconds: watts.length,
			needed: options.minimumSamples
		});
		if (neverRecorded(watts, options.dueCounts, options) >= options.coarseShare) return exact(0, "%", watts.length, {
			circumstances: ["coarse steps"],
			details: { samples: watts.length }
		});
		const lattice = findLattice(watts, options);
		const chance = lattice === null ? 1 : Math.min(1, Math.exp(lattice.logTried - lattice.gain));
		if (lattice === null || chance > options.chance) return exact(0, "%", watts.length, { details: { samples: watts.length } });
		const percent = (factor) => 100 * Math.abs(factor - 1);
		const ends = [percent(lattice.low), percent(lattice.high)].sort((a, b) => a - b);
		const at = (k) => samples.at[used[k]];
		const throughout = !isPart(watts, lattice, options.outsideExpected, options.outsideLoss, options);
		const stretch = throughout ? [at(0), at(watts.length - 1) + 1] : [at(lattice.from), at(lattice.to - 1) + 1];
		return measured(percent(lattice.factor), "%", ends, watts.length, {
			stretches: [stretch],
			circumstances: [...throughout ? ["throughout"] : [], ...lattice.factor < 1 ? ["lowered"] : []],
			chance,
			details: {
				factor: {
					value: lattice.factor,
					unit: "ratio"
				},
				counted: lattice.counted,
				expected: Math.round(lattice.expected),
				samples: lattice.to - lattice.from,
				from: stretch[0],
				to: stretch[1]
			},
			charts: [chart$1(`comb:${subjectOf(all, recording)}`, watts.subarray(lattice.from, lattice.to), lattice, stretch, options)]
		});
	}
});
/** Samples with digits that tell something: whole, pedalled, no repeat of the one before, not standing still. */
function wholeWatts(power, { fromWatts, steadySamples, steadyWatts }) {
	const steady = inSteadyWindow(power, steadySamples, steadyWatts);
	const used = [];
	let valid = 0;
	let whole = 0;
	for (let i = 0; i < power.length; i++) {
		const watts = power[i];
		if (!(watts >= fromWatts)) continue;
		valid++;
		if (!Number.isInteger(watts)) continue;
		whole++;
		if (steady[i] === 0 && watts !== power[i - 1]) used.push(i);
	}
	return {
		valid,
		whole,
		used: Int32Array.from(used)
	};
}
function chart$1(id, watts, lattice, stretch, search) {
	const { counts, expected } = countsOf(watts, search);
	const from = Math.max(0, counts.findIndex((count) => count > 0));
	return {
		kind: "comb",
		id,
		from,
		counts: [...counts.subarray(from)],
		expected: Array.from(expected.subarray(from), (due) => Math.round(due * 10) / 10),
		factor: lattice.factor,
		marked: combOf(lattice.factor, counts.length - 1, lattice.rounding).filter((k) => k >= from),
		stretch
	};
}
// src/measure/lost-seconds.ts
/**
* The most seconds lost in any `withinSeconds` of the race: one long gap and a link that keeps dropping
* out weigh alike. Lost is what has no record or no power, and what only looks recorded: zeros between
* hard pedalling while cadence goes on, and every channel held at once. Pauses and the rhythm of a recorder
* that writes irregularly are not losses.
*/
const lostSeconds = defineMeasure({
	id: "lost-seconds",
	of: "recording",
	options: {
		withinSeconds: number$3("length of the stretch in which losses are added up, s"),
		stillSpeed: number$3("slower than this a rider stands, and a meter may sleep, m/s"),
		zeroSeconds: number$3("shortest run of zero power under turning cranks that counts as lost, s"),
		zeroCadence: number$3("cadence from which cranks count as turning, rpm"),
		zeroBesideWatts: number$3("mean power just before and after that makes such zeros a loss, W"),
		heldSeconds: number$3("shortest run of all channels standing still together that counts as lost, s")
	},
	compute(all, recording, options) {
		const [from, to] = all.window;
		if (to <= from) return notApplicable("too-short", {
			seconds: 0,
			needed: 1
		});
		if (recording.channels.power === void 0) return notApplicable("no-channel", { channel: "power" });
		const lost = lostIn(recording, all.window, recording.channels.power, options);
		const gaps = stretchesWhere(from, to, (i) => lost[i] === 1);
		const paused = stretchesWhere(from, to, (i) => recording.state[i] === SecondState.paused);
		const total = totalLength(gaps);
		return exact(mostWithin(lost, all.window, options.withinSeconds), "s", to - from, {
			stretches: gaps,
			details: {
				within: {
					value: Math.min(options.withinSeconds, to - from),
					unit: "s"
				},
				total: {
					value: total,
					unit: "s"
				},
				share: {
					value: total / (to - from),
					unit: "share"
				},
				longest: {
					value: longestLength(gaps),
					unit: "s"
				},
				paused: {
					value: totalLength(paused),
					unit: "s"
				}
			},
			charts: total === 0 ? [] : [{
				kind: "coverage",
				id: `lost:${subjectOf(all, recording)}`,
				recording: [0, recording.length],
				window: all.window,
				lost: gaps,
				paused
			}]
		});
	}
});
function lostIn(recording, [from, to], power, options) {
	const { state, channels } = recording;
	const { cadence, speed } = channels;
	const lost = new Uint8Array(to);
	for (let i = from; i < to; i++) {
		const asleep = speed !== void 0 && speed[i] < options.stillSpeed;
		const powerless = Number.isNaN(power[i]) && state[i] !== SecondState.paused && !asleep;
		if (state[i] === SecondState.missing || powerless) lost[i] = 1;
	}
	if (cadence !== void 0) {
		const zeros = stretchesWhere(from, to, (i) => power[i] === 0 && cadence[i] >= options.zeroCadence && state[i] === SecondState.recorded, options.zeroSeconds);
		for (const [a, b] of zeros) if (power[a - 1] >= options.zeroBesideWatts && power[b] >= options.zeroBesideWatts) lost.fill(1, a, b);
	}
	const columns = [
		power,
		cadence,
		speed,
		channels.heartRate
	].filter((c) => c !== void 0);
	if (columns.length < 2) return lost;
	const held = stretchesWhere(from + 1, to, (i) => power[i] > 0 && state[i] === SecondState.recorded && columns.every((c) => c[i] === c[i - 1]), options.heldSeconds);
	for (const [a, b] of held) lost.fill(1, a, b);
	return lost;
}
/** The most marked seconds in any window of this length. */
function mostWithin(lost, [from, to], within) {
	let inside = 0;
	let most = 0;
	for (let i = from; i < to; i++) {
		inside += lost[i];
		if (i - within >= from) inside -= lost[i - within];
		most = Math.max(most, inside);
	}
	return most;
}
// src/math/road-power.ts
/** Standard acceleration, m/s²; drag area of turning wheels, m² (from memory), inertia over radius squared, kg. */
const gravity = 9.81;
const wheelDragArea = .0044;
const wheelMass = .14 / .311 ** 2;
/** Efficiency of the chain (Martin et al. 1998). */
const chainEfficiency = .976;
/**
* Power at the wheel (W) without gravity, rolling and change of speed of the mass: drag and bearings, by the
* model of Martin et al. 1998, J Appl Biomech 14:276-291.
*
* @param speed m/s over ground
* @param air m/s against the air
*/
function dragPower({ dragArea, density }, speed, air = speed) {
	return .5 * density * (dragArea + wheelDragArea) * air * air * speed + speed * (91 + 8.7 * speed) / 1e3;
}
/**
* Mass of rider and bicycle (kg) that this power at the wheel moves: the same model solved for mass.
*
* @param watts mean power at the wheel
* @param speed mean speed, m/s
* @param gained change of half the squared speed for each second, m²/s³
*/
function movedMass(road, watts, speed, grade, gained) {
	const along = Math.cos(Math.atan(grade));
	const perKg = gravity * speed * along * (road.rolling + grade) + gained;
	return (watts - dragPower(road, speed) - wheelMass * gained) / perKg;
}
/**
* Density of air, kg/m³: dry air and vapour as ideal gases, with the vapour pressure of Buck 1981.
*
* @param celsius temperature
* @param pascal pressure
* @param humidity relative, 0–1
*/
function airDensity(celsius, pascal, humidity) {
	const kelvin = celsius + 273.15;
	const vapour = humidity * (611.21 * Math.exp((18.678 - celsius / 234.5) * (celsius / (257.14 + celsius))));
	return (pascal - vapour) / (287.058 * kelvin) + vapour / (461.495 * kelvin);
}
// src/measure/mass-shortfall.ts
/** Sea level, Pa, and air of middling humidity: on a steep climb air hardly counts. */
const pressure = 101325;
const humidity = .5;
/**
* By how much the speed on steep, steady climbs makes the rider lighter than declared, in percent: the road
* power model (Martin et al. 1998) solved for mass, stretch by stretch, and the middle one taken. Where the
* stretches contradict one another, speed does not follow from power and nothing is said.
*/
const massShortfall = defineMeasure({
	id: "mass-shortfall",
	of: "recording",
	options: {
		stretchSeconds: number$3("length of a stretch, s"),
		leastStretches: number$3("fewest stretches"),
		steepGrade: number$3("grade from which gravity outweighs the rest, rise over run"),
		leastSpeed: number$3("speed below which grade is not known well, m/s"),
		bicycleKg: number$3("mass of bicycle and clothing, kg"),
		dragArea: number$3("drag area, m²"),
		rolling: number$3("coefficient of rolling resistance"),
		usualCelsius: number$3("temperature where none was recorded, °C"),
		mostScatter: number$3("scatter of the stretches (median deviation, share) above which speed is not tied to power"),
		fieldSpread: number$3("SD of meters as found in the field, %"),
		otherSpread: number$3("SD that grade, air and bicycle add, %")
	},
	compute(all, series, options) {
		for (const channel of [
			"power",
			"speed",
			"altitude"
		]) if (series.channels[channel] === void 0) return notApplicable("no-channel", { channel });
		const { massKg, devices } = all.rider;
		if (massKg === void 0) return notApplicable("no-fact", { fact: "massKg" });
		const device = declaredFor(devices, series.recording.name, "primary");
		const wheel = device !== null && (device.place === "trainer" || device.place === "hub");
		const masses = impliedMasses(series, all.window, wheel ? 1 : chainEfficiency, options);
		const [blocks, needed] = [masses.length, options.leastStretches];
		if (blocks < needed) return notApplicable("too-few-blocks", {
			blocks,
			needed
		});
		const middle = median$1(masses);
		const scatter = median$1(masses.map((mass) => Math.abs(mass - middle)));
		if (!(middle > options.bicycleKg) || scatter > options.mostScatter * middle) return notApplicable("speed-not-tied");
		const percent = (kg) => 100 * (1 - (kg - options.bicycleKg) / massKg);
		const reach = 3.6419594568 * scatter / Math.sqrt(blocks);
		const meter = device === null ? options.fieldSpread : device.tolerancePercent / Math.sqrt(3);
		const lever = middle / massKg;
		const spread = (own) => ({
			centre: 0,
			spread: Math.hypot(own * lever, options.otherSpread, 100 * reach / 1.96 / massKg)
		});
		return measured(percent(middle), "%", [percent(middle + reach), percent(middle - reach)], blocks, {
			expected: {
				declared: spread(meter),
				field: spread(options.fieldSpread)
			},
			circumstances: series.recording.indoors === true ? [] : ["outdoors"],
			details: {
				implied: {
					value: middle - options.bicycleKg,
					unit: "kg"
				},
				declared: {
					value: massKg,
					unit: "kg"
				},
				bicycle: {
					value: options.bicycleKg,
					unit: "kg"
				},
				stretches: blocks
			}
		});
	},
	circumstances: { outdoors: "wind, draft and barometer blur what speed says of mass" }
});
/** Rider and bicycle as each steep stretch implies them, kg. */
function impliedMasses({ channels, state }, [from, to], efficiency, options) {
	const { power, speed, altitude, temperature } = channels;
	const masses = [];
	const length = options.stretchSeconds;
	for (let start = from; start + length < to; start += length) {
		let watts = 0;
		let metres = 0;
		let whole = true;
		for (let i = start; i < start + length; i++) {
			watts += power[i];
			metres += speed[i];
			whole &&= state[i] === SecondState.recorded && power[i] > 0 && speed[i] >= options.leastSpeed;
		}
		const end = start + length;
		const grade = (altitude[end] - altitude[start]) / metres;
		if (!whole || !(grade >= options.steepGrade)) continue;
		const celsius = temperature?.[start] ?? options.usualCelsius;
		const density = airDensity(Number.isNaN(celsius) ? options.usualCelsius : celsius, pressure, humidity);
		const gained = (speed[end] ** 2 - speed[start] ** 2) / 2 / length;
		const mass = movedMass({
			...options,
			density
		}, watts / length * efficiency, metres / length, grade, gained);
		if (Number.isFinite(mass)) masses.push(mass);
	}
	return masses;
}
// src/measure/misplaced-share.ts
/**
* Share of the records whose place in time is in doubt: as many as each backward step of the clock covers
* (at most the records before or after it: a clock that is put right in the first minute misplaces only
* that), far from the body of the ride, without a time, or sharing a second with another where no
* neighbouring second is free for it. An exact count.
*/
const misplacedShare = defineMeasure({
	id: "misplaced-share",
	of: "recording",
	options: {},
	compute(_all, recording) {
		const { time } = recording.recording;
		if (time.length === 0) return notApplicable("too-short", {
			seconds: 0,
			needed: 1
		});
		const { behind, steps, timeless, far, whole, furthest } = walk(recording, time);
		let recorded = 0;
		for (const state of recording.state) if (state === SecondState.recorded) recorded++;
		const doubled = whole ? Math.max(0, time.length - timeless - far - recorded) : 0;
		const misplaced = Math.min(time.length, Math.max(behind, doubled) + timeless + far);
		return exact(misplaced / time.length, "share", time.length, { details: {
			records: time.length,
			misplaced,
			backward: steps,
			behind,
			furthest: {
				value: furthest,
				unit: "s"
			},
			far,
			doubled,
			timeless
		} });
	}
});
function walk({ start, length }, time) {
	let latest = -Infinity;
	const found = {
		behind: 0,
		steps: 0,
		timeless: 0,
		far: 0,
		whole: true,
		furthest: 0
	};
	let previous = -Infinity;
	for (let k = 0; k < time.length; k++) {
		const clock = time[k];
		if (!Number.isFinite(clock)) {
			found.timeless++;
			continue;
		}
		if (!Number.isInteger(clock)) found.whole = false;
		const second = Math.round(clock);
		if (second < start || second >= start + length) {
			found.far++;
			continue;
		}
		if (clock < latest && clock < previous) {
			const back = Math.round(latest - clock);
			found.steps++;
			found.furthest = Math.max(found.furthest, back);
			found.behind += Math.min(back, k, time.length - k);
		}
		latest = Math.max(latest, clock);
		previous = clock;
	}
	return found;
}
// src/measure/missing-channel-count.ts
const required$3 = [
	"power",
	"cadence",
	"heartRate"
];
/**
* Counts the channels that the event requires and the recording cannot give in the race window. Absent,
* zero throughout and mostly invalid are different faults and are told apart.
*/
const missingChannelCount = defineMeasure({
	id: "missing-channel-count",
	of: "recording",
	options: { validShare: number$3("share of the recorded seconds in which a channel must hold a value") },
	circumstances: {
		power: "power is missing",
		cadence: "cadence is missing",
		heartRate: "heart rate is missing"
	},
	compute(all, recording, { validShare }) {
		const wanted = required$3.filter((channel) => all.race.required?.includes(channel));
		if (wanted.length === 0) return notApplicable("nothing-required");
		const lacks = wanted.flatMap((channel) => {
			const lack = lackOf(recording, channel, all.window, validShare);
			return lack === null ? [] : [{
				channel,
				lack
			}];
		});
		const names = (kind) => lacks.filter(({ lack }) => lack === kind).map(({ channel }) => channel === "heartRate" ? "heart rate" : channel).join(", ") || "none";
		return exact(lacks.length, "count", wanted.length, {
			circumstances: lacks.map(({ channel }) => channel),
			details: {
				required: wanted.length,
				missing: lacks.length,
				absent: names("absent"),
				zero: names("zero"),
				invalid: names("invalid")
			}
		});
	}
});
function lackOf({ channels, state }, channel, [from, to], validShare) {
	const column = channels[channel];
	if (column === void 0) return "absent";
	let recorded = 0;
	let valid = 0;
	let moved = 0;
	for (let i = from; i < to; i++) {
		if (state[i] !== SecondState.recorded) continue;
		recorded++;
		if (Number.isNaN(column[i])) continue;
		valid++;
		if (column[i] !== 0) moved++;
	}
	if (valid === 0 || valid < validShare * recorded) return "invalid";
	return moved === 0 ? "zero" : null;
}
// src/math/chi-squared.ts
/**
* Probability that chi-squared with a whole number of degrees of freedom is at least x: the closed sums of
* Abramowitz & Stegun 26.4.4 (odd) and 26.4.5 (even).
*/
function chiSquaredTail(x, freedom) {
	if (x <= 0) return 1;
	const odd = freedom % 2 === 1;
	const root = Math.sqrt(x);
	let term = odd ? root : 1;
	let sum = odd ? 0 : 1;
	for (let r = 1; r <= (freedom - (odd ? 1 : 2)) / 2; r++) {
		if (odd) {
			if (r > 1) term *= x / (2 * r - 1);
		} else term *= x / (2 * r);
		sum += term;
	}
	if (!odd) return Math.exp(-x / 2) * sum;
	const density = Math.exp(-x / 2) / Math.sqrt(2 * Math.PI);
	return 2 * (1 - normalProbability(root)) + 2 * density * sum;
}
// src/math/last-digits.ts
/**
* How evenly the last digits of whole numbers are spread. What is measured far beyond one unit ends on every
* digit alike; what is made up, or counted in steps, does not (Mosimann et al. 1995).
*/
function lastDigits(numbers) {
	const counts = /* @__PURE__ */ new Float64Array(10);
	let count = 0;
	for (const number of numbers) {
		counts[Math.abs(Math.round(number)) % 10]++;
		count++;
	}
	if (count === 0) return {
		chiSquared: 0,
		tail: 1,
		uneven: 0,
		count
	};
	let chiSquared = 0;
	let uneven = 0;
	for (const one of counts) {
		chiSquared += (one - count / 10) ** 2 / (count / 10);
		uneven += Math.abs(one / count - .1) / 2;
	}
	return {
		chiSquared,
		tail: chiSquaredTail(chiSquared, 9),
		uneven,
		count
	};
}
// src/measure/recording/traits.ts
/** What every rider shows, as far as the recording can show it. */
function traitsOf(series, limits) {
	return [
		cadenceWander,
		powerScatter,
		heartMoves,
		heartScatter,
		digits$1
	].flatMap((trait) => trait(series, limits) ?? []);
}
function trait(name, value, unit, atLeast, atMost) {
	const shown = (atLeast === null || value >= atLeast) && (atMost === null || value <= atMost);
	return {
		trait: name,
		value: Math.round(value * 1e3) / 1e3,
		unit,
		atLeast,
		atMost,
		shown
	};
}
/** Legs do not keep a cadence: means over half a minute wander. */
function cadenceWander({ channels: { cadence, power }, length }, limits) {
	if (cadence === void 0) return null;
	const means = [];
	for (let from = 0; from + 30 <= length; from += 30) {
		let sum = 0;
		let turning = 0;
		for (let i = from; i < from + 30; i++) {
			if (!(cadence[i] > 0) || power !== void 0 && !(power[i] > 0)) continue;
			sum += cadence[i];
			turning++;
		}
		if (turning === 30) means.push(sum / 30);
	}
	if (30 * means.length < limits.minimumSeconds) return null;
	const mean = means.reduce((a, b) => a + b, 0) / means.length;
	const variance = means.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (means.length - 1);
	return trait("cadence wanders from half minute to half minute", 100 * Math.sqrt(variance) / mean, "%", limits.cadenceWander, null);
}
/** Pedalling is uneven alike over 2 s and 4 s; numbers drawn at random even out (ratio 1.41). */
function powerScatter({ channels: { power } }, limits) {
	if (power === void 0) return null;
	const pedalled = power.map((watts) => watts >= limits.minimumWatts ? watts : NaN);
	const short = deviation(pedalled, 2);
	const long = deviation(pedalled, 4);
	if (short.pairs < limits.minimumSeconds || long.whole === 0) return null;
	return trait("power scatters over 4 s about as over 2 s", short.whole / long.whole, "ratio", null, limits.scatterRatio);
}
/** A heart rate in whole beats changes now and then, neither never nor every second. */
function heartMoves({ channels: { heartRate } }, limits) {
	if (heartRate === void 0) return null;
	let seconds = 0;
	let moves = 0;
	for (let i = 1; i < heartRate.length; i++) {
		const change = heartRate[i] - heartRate[i - 1];
		if (Number.isNaN(change)) continue;
		seconds++;
		if (change !== 0) moves++;
	}
	if (seconds < limits.minimumSeconds) return null;
	return trait("heart rate changes from second to second", moves / seconds, "share", limits.stillestHeart, limits.busiestHeart);
}
/** No formula of power and time tells a heart rate to the beat: the best of several leaves scatter. */
function heartScatter({ channels: { heartRate, power } }, limits) {
	if (heartRate === void 0 || power === void 0) return null;
	const rows = [];
	for (let i = limits.heartFrom; i < heartRate.length; i += 5) if (heartRate[i] > 0) rows.push(i);
	if (5 * rows.length < limits.minimumSeconds) return null;
	const y = Float64Array.from(rows, (i) => heartRate[i]);
	const ones = y.map(() => 1);
	const time = Float64Array.from(rows, (i) => i / heartRate.length);
	let least = Number.POSITIVE_INFINITY;
	for (const tau of limits.heartTimes) {
		const answer = firstOrder(power, tau);
		const fit = leastSquares([
			ones,
			time,
			Float64Array.from(rows, (i) => answer[i])
		], y);
		if (fit === null) continue;
		const squares = fit.residuals.reduce((sum, residual) => sum + residual * residual, 0);
		least = Math.min(least, Math.sqrt(squares / rows.length));
	}
	if (!Number.isFinite(least)) return null;
	return trait("heart rate has a scatter of its own", least, "bpm", limits.heartScatter, null);
}
/** Watts that were measured end on every digit alike. */
function digits$1({ recording }, limits) {
	const { power } = recording.channels;
	if (power === void 0) return null;
	const measured = [];
	for (let i = 1; i < power.length; i++) {
		const watts = power[i];
		if (watts >= limits.minimumWatts && watts !== power[i - 1] && Number.isInteger(watts)) measured.push(watts);
	}
	if (measured.length < limits.minimumSeconds) return null;
	const { uneven, tail } = lastDigits(measured);
	return trait("watts end on every digit alike", tail <= limits.digitChance ? uneven : 0, "share", null, limits.unevenDigits);
}
// src/measure/missing-traits.ts
/**
* Counts the things that every rider shows and this recording does not: cadence that wanders, power uneven
* over longer and shorter stretches alike, a heart rate that moves and keeps a scatter of its own, last
* digits as they fall. An exact count of those that the recording could show.
*/
const missingTraits = defineMeasure({
	id: "missing-traits",
	of: "recording",
	options: {
		minimumWatts: number$3("power from which seconds count, W"),
		minimumSeconds: number$3("seconds below which a trait is not looked at"),
		fewest: number$3("traits that a recording must be able to show"),
		cadenceWander: number$3("standard deviation of half-minute means of cadence from which it wanders, %"),
		scatterRatio: number$3("scatter of 2 s means over that of 4 s means up to which pedalling is uneven alike"),
		stillestHeart: number$3("share of seconds in which heart rate changes, at least"),
		busiestHeart: number$3("and at most"),
		heartScatter: number$3("scatter of heart rate around what power and time explain, at least, bpm"),
		heartFrom: number$3("second of the recording from which that is looked at"),
		heartTimes: numbers("time constants tried for the answer of heart rate to power, s"),
		unevenDigits: number$3("share of watts that would have to end otherwise, at most"),
		digitChance: number$3("probability by chance up to which uneven digits count")
	},
	compute(all, recording, options) {
		const traits = traitsOf(recording, options);
		if (traits.length < options.fewest) return notApplicable("too-short", {
			seconds: recording.length,
			needed: options.minimumSeconds
		});
		const missing = traits.filter(({ shown }) => !shown);
		return exact(missing.length, "count", traits.length, {
			details: {
				missing: missing.length,
				looked: traits.length,
				traits: missing.map(({ trait }) => trait).join("; ") || "none"
			},
			charts: missing.length === 0 ? [] : [{
				kind: "traits",
				id: `traits:${subjectOf(all, recording)}`,
				traits
			}]
		});
	}
});
// src/math/long-run.ts
/**
* Mean of values in order of time that resemble their neighbours, with an error that counts that in: the
* long-run variance as the mean of squared projections on the first cosines (Müller 2004; equal-weighted
* cosine estimator of Lazarus, Lewis, Stock & Watson 2018, 0.41·n^(2/3) cosines), with as many degrees
* of freedom as cosines.
*
* @param values at least 8
*/
function longRunMean(values) {
	const n = values.length;
	const mean = values.reduce((a, b) => a + b, 0) / n;
	const cosines = Math.max(4, Math.min(n - 1, Math.round(.41 * n ** (2 / 3))));
	let squares = 0;
	for (let j = 1; j <= cosines; j++) {
		let projection = 0;
		for (let t = 0; t < n; t++) projection += (values[t] - mean) * Math.cos(Math.PI * j * (t + .5) / n);
		squares += projection ** 2 * (2 / n);
	}
	return {
		mean,
		error: Math.sqrt(squares / cosines / n),
		reach: studentQuantile(.975, cosines)
	};
}
// src/measure/overall-difference.ts
/**
* Overall difference of two meters: total work of the primary over that of the second, in percent, over
* the seconds of the race that both recorded with power on either. The interval counts in that blocks
* resemble their neighbours; where honest pairs lie is stated beside it.
*/
const overallDifference = defineMeasure({
	id: "overall-difference",
	of: "pair",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks that give an interval")
	},
	compute(all, pair, { blockSeconds, leastBlocks }) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const samples = pairSamples(all, pair);
		const blocks = blocksOf(samples, blockSeconds);
		if (blocks.count < leastBlocks) return notApplicable("too-few-blocks", {
			blocks: blocks.count,
			needed: leastBlocks
		});
		const ownMean = meanOf$3(samples.own);
		const otherMean = meanOf$3(samples.other);
		const ratio = ownMean / otherMean;
		const { error, reach } = longRunMean(blocks.own.map((watts, i) => (watts - ratio * blocks.other[i]) / otherMean));
		const percent = 100 * (ratio - 1);
		const half = 100 * reach * error;
		return measured(percent, "%", [percent - half, percent + half], blocks.count, {
			stretches: [all.window],
			expected: expectedDifference(all, pair.subject, 100 * error),
			details: {
				own: {
					value: ownMean,
					unit: "W"
				},
				other: {
					value: otherMean,
					unit: "W"
				},
				seconds: {
					value: samples.at.length,
					unit: "s"
				}
			}
		});
	}
});
function meanOf$3(values) {
	return values.reduce((a, b) => a + b, 0) / values.length;
}
// src/measure/power-at-zero-cadence.ts
/**
* Seconds in which power goes on though the cranks stand still, beyond the tail that a flywheel and a slow
* cadence sensor make after every stop: an exact count over the stretches longer than that tail.
*/
const powerAtZeroCadence = defineMeasure({
	id: "power-at-zero-cadence",
	of: "recording",
	options: {
		minimumWatts: number$3("power from which a second counts, W"),
		tailSeconds: number$3("how long power may go on after the cranks stop, s"),
		deadShare: number$3("share of seconds with power at zero cadence from which the sensor counts as dead")
	},
	compute(all, recording, options) {
		const { power, cadence } = recording.channels;
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		if (cadence === void 0) return notApplicable("no-channel", { channel: "cadence" });
		const { flowing, still } = seconds$1(recording, power, cadence, options.minimumWatts);
		if (flowing === 0) return notApplicable("no-power-flow");
		if (still >= options.deadShare * flowing) return notApplicable("dead-channel", { channel: "cadence" });
		const held = stretchesWhere(0, recording.length, (i) => cadence[i] === 0 && power[i] >= options.minimumWatts && recording.state[i] === SecondState.recorded, options.tailSeconds + 1);
		return exact(totalLength(held) - held.length * options.tailSeconds, "s", held.length, {
			stretches: held,
			details: {
				stretches: held.length,
				longest: {
					value: longestLength(held),
					unit: "s"
				},
				tail: {
					value: options.tailSeconds,
					unit: "s"
				}
			},
			charts: held.length === 0 ? [] : [closeUps$1(`coasting:${subjectOf(all, recording)}`, recording, held)]
		});
	}
});
function seconds$1({ state, length }, power, cadence, watts) {
	let flowing = 0;
	let still = 0;
	for (let i = 0; i < length; i++) {
		if (state[i] !== SecondState.recorded || !(power[i] >= watts) || Number.isNaN(cadence[i])) continue;
		flowing++;
		if (cadence[i] === 0) still++;
	}
	return {
		flowing,
		still
	};
}
// src/measure/power-dependence.ts
/**
* How much more the primary reads above the second at high power than at the median power of the race,
* in percent, in blocks long enough that lag and averaging do not count; sprints have a rule of their own.
*/
const powerDependence = defineMeasure({
	id: "power-dependence",
	of: "pair",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks that make a slope"),
		mostInflation: number$3("variance inflation above which power cannot be told from time and cadence"),
		lowQuantile: number$3("quantile of block power where the range begins: the fit begins at the median, 0.5"),
		highQuantile: number$3("quantile of block power where the range ends"),
		leastRange: number$3("least range of power, as a logarithm of the ratio of its ends"),
		declaredSpread: number$3("honest change between two meters within their claims, one standard deviation, %"),
		fieldSpread: number$3("honest change between two meters as found in the field, one standard deviation, %")
	},
	compute(all, pair, options) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
		const column = blocks.own.map((watts, i) => (watts + blocks.other[i]) / 2);
		const distance = (from, to) => Math.log(to / from);
		return dependence$1(pair.subject, blocks, {
			effect: "power",
			unit: "W",
			column,
			distance
		}, options);
	}
});
// src/math/critical-power.ts
/**
* Two-parameter critical power from all-out efforts: work = W′ + CP·t, by linear least squares.
*
* @param seconds duration of each effort, at least two different ones
* @param watts mean power of each
*/
function workTimeFit(seconds, watts) {
	const work = watts.map((power, i) => power * seconds[i]);
	const fit = leastSquares([new Float64Array(seconds.length).fill(1), seconds], work);
	if (fit === null) return null;
	const freedom = seconds.length - 2;
	const reach = (k) => {
		if (freedom < 1) return null;
		const variance = fit.residuals.reduce((sum, r) => sum + r * r, 0) / freedom;
		return studentQuantile(.975, freedom) * Math.sqrt(variance * fit.inverse[k][k]);
	};
	return {
		cp: fit.coefficients[1],
		reserve: fit.coefficients[0],
		cpReach: reach(1),
		reserveReach: reach(0)
	};
}
/**
* Three-parameter fit by least squares on time. For a given CP the curve is a straight line in 1/(P - CP),
* so that only CP is searched for (golden section between 0 and the lowest power).
*
* @returns null with fewer than four efforts, or where no such curve fits
*/
function threeParameterFit(seconds, watts) {
	if (seconds.length < 4) return null;
	const lowest = watts.reduce((a, b) => Math.min(a, b), Infinity);
	const lineAt = (cp) => {
		const x = watts.map((power) => 1 / (power - cp));
		return leastSquares([x, new Float64Array(x.length).fill(1)], seconds);
	};
	const left = (cp) => lineAt(cp)?.residuals.reduce((sum, r) => sum + r * r, 0) ?? Infinity;
	const cp = lowestPoint(left, 0, lowest * (1 - 1e-9));
	const line = lineAt(cp);
	if (line === null) return null;
	const [reserve, offset] = [line.coefficients[0], -line.coefficients[1]];
	return reserve > 0 && offset > 0 ? {
		cp,
		reserve,
		pMax: cp + reserve / offset
	} : null;
}
/** Where a function is lowest between two ends: the best of an even grid, then golden section around it. */
function lowestPoint(value, from, to) {
	const steps = 200;
	let best = 0;
	for (let k = 1; k <= steps; k++) if (value(from + (to - from) * k / steps) < value(from + (to - from) * best / steps)) best = k;
	let low = from + (to - from) * Math.max(0, best - 1) / steps;
	let high = from + (to - from) * Math.min(steps, best + 1) / steps;
	const golden = (Math.sqrt(5) - 1) / 2;
	for (let i = 0; i < 80; i++) {
		const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
		if (value(a) < value(b)) high = b;
		else low = a;
	}
	return (low + high) / 2;
}
/**
* The most that was drawn at any time from a reserve that power above CP empties and power below CP fills
* again as fast (linear: the generous case), J. A missing second counts as rest.
*/
function mostDrawn(power, cp, from = 0, to = power.length) {
	let drawn = 0;
	let most = 0;
	for (let i = from; i < to; i++) {
		const watts = power[i];
		drawn = Math.max(0, drawn + (Number.isNaN(watts) ? 0 : watts) - cp);
		if (drawn > most) most = drawn;
	}
	return most;
}
// src/measure/reserve-share.ts
/**
* The most that the race drew at once from the reserve above critical power (W′), in percent of the highest
* reserve that the history leaves possible. Only the generous case is judged: critical power and W′ at the
* upper ends of what all-out efforts show, both at once, and a reserve that fills as fast as it empties.
* Anything finer hangs on a critical power that nobody knows to 3 %.
*/
const reserveShare = defineMeasure({
	id: "reserve-share",
	of: "rider",
	options: {
		durations: numbers("durations of the efforts that critical power is fitted to, s"),
		fewest: number$3("fewest of them that must be all-out"),
		widest: number$3("ratio of the longest to the shortest that must be reached"),
		heartRateSlack: number$3("heart rate this much below the race’s over the same duration: not all-out, %"),
		cpSpread: number$3("SD of a critical power from field efforts, %"),
		reserveSpread: number$3("SD of such a W′, %"),
		generous: number$3("standard deviations granted"),
		leastReserve: number$3("W′ granted at least, kJ")
	},
	compute(all, _target, options) {
		const { history } = all;
		const { power, heartRate } = all.primary.channels;
		if (history === null) return notApplicable("no-history");
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		if (heartRate === void 0) return notApplicable("no-channel", { channel: "heartRate" });
		const efforts = allOut(all, history, options);
		const longest = efforts.at(-1)?.seconds ?? 0;
		if (efforts.length < options.fewest || longest < options.widest * efforts[0].seconds) return notApplicable("history-too-thin", {
			windows: efforts.length,
			needed: options.fewest
		});
		const seconds = Float64Array.from(efforts, (effort) => effort.seconds);
		const watts = Float64Array.from(efforts, (effort) => effort.watts);
		const two = workTimeFit(seconds, watts);
		if (two === null) return notApplicable("cannot-separate");
		const three = threeParameterFit(seconds, watts);
		const { cp, reserve } = granted(two, three, options);
		const drawn = mostDrawn(power, cp, ...all.window);
		return exact(100 * drawn / reserve, "%", efforts.length, {
			stretches: [all.window],
			details: {
				drawn: {
					value: drawn / 1e3,
					unit: "kJ"
				},
				granted: {
					value: reserve / 1e3,
					unit: "kJ"
				},
				critical: {
					value: cp,
					unit: "W"
				},
				fitted: {
					value: two.cp,
					unit: "W"
				},
				fittedReserve: {
					value: two.reserve / 1e3,
					unit: "kJ"
				},
				model: three === null || three.cp < two.cp ? "2 parameters" : "3 parameters",
				efforts: efforts.length
			}
		});
	}
});
/** The upper ends of both numbers: of the fits' own intervals, of both models, and of what is published. */
function granted(two, three, options) {
	const { generous, cpSpread, reserveSpread, leastReserve } = options;
	const cp = Math.max(two.cp, three?.cp ?? 0);
	const reserve = Math.max(two.reserve, three === null || three.cp < .8 * two.cp ? 0 : three.reserve, 1e3 * leastReserve);
	return {
		cp: cp * (1 + generous * cpSpread / 100),
		reserve: reserve * (1 + generous * reserveSpread / 100)
	};
}
/** The best past effort of each duration among those that were as hard for the heart as the race was. */
function allOut(all, { profile, rides }, { durations, heartRateSlack }) {
	const { power, heartRate } = all.primary.channels;
	const hard = meanWithin(power, heartRate, durations, all.window);
	return durations.flatMap((seconds, k) => {
		const at = profile.durations.indexOf(seconds);
		const floor = hard[k] * (1 - heartRateSlack / 100);
		const watts = rides.reduce((most, ride) => Math.max(most, bestOf(ride, at, floor)), 0);
		return watts > 0 ? [{
			seconds,
			watts
		}] : [];
	});
}
function bestOf(ride, at, floor) {
	const bpm = ride.heartRates?.[at] ?? 0;
	return bpm >= floor && bpm > 0 ? ride.bests[at] ?? 0 : 0;
}
// src/measure/pair/detail.ts
/**
* How much more one trace varies from second to second than the other: the larger mean square of first
* differences over the smaller, at least 1. A meter that averages n seconds is about n² lower.
*/
function detailRatio(own, other, [from, to]) {
	let a = 0;
	let b = 0;
	for (let t = from + 1; t < to; t++) {
		const ownStep = own[t] - own[t - 1];
		const otherStep = other[t] - other[t - 1];
		if (Number.isNaN(ownStep + otherStep)) continue;
		a += ownStep ** 2;
		b += otherStep ** 2;
	}
	return a > 0 && b > 0 ? Math.max(a / b, b / a) : Number.POSITIVE_INFINITY;
}
/** What is faster than `seconds` in a trace: each second minus the centred mean around it; NaN at gaps. */
function detailOf(column, seconds) {
	const half = Math.floor(seconds / 2);
	const sums = new Float64Array(column.length + 1);
	for (let t = 0; t < column.length; t++) sums[t + 1] = sums[t] + (Number.isNaN(column[t]) ? 0 : column[t]);
	const gaps = new Int32Array(column.length + 1);
	for (let t = 0; t < column.length; t++) gaps[t + 1] = gaps[t] + (Number.isNaN(column[t]) ? 1 : 0);
	return column.map((value, t) => {
		const from = t - half;
		const to = t + half + 1;
		if (from < 0 || to > column.length || gaps[to] > gaps[from]) return NaN;
		return value - (sums[to] - sums[from]) / (to - from);
	});
}
// src/measure/shared-detail.ts
/**
* How much of the detail of one ride a second recording shares: the correlation of what is faster than
* about ten seconds, in power and in cadence, the better of the two, at the lag that suits it best.
* Riders of one race share surges and climbs, never the detail of each pedal stroke; two meters on one
* bicycle do. This is the one comparison that needs no secure clock.
*/
const sharedDetail = defineMeasure({
	id: "shared-detail",
	of: "pair",
	options: {
		detailSeconds: number$3("what is faster than this is detail, s"),
		lagSeconds: number$3("lags searched either side of the alignment, s"),
		leastSeconds: number$3("fewest seconds compared"),
		leastWatts: number$3("least standard deviation of detail in power, W: less is rounding"),
		leastRpm: number$3("least standard deviation of detail in cadence, rpm: less is rounding"),
		secondsPerSample: number$3("seconds that count as one independent sample of detail"),
		mostDetailRatio: number$3("ratio of second-to-second variation above which one meter averages far longer")
	},
	circumstances: {
		"unequal averaging": "one meter averages over many more seconds than the other, which hides the detail",
		"power only": "cadence could not be compared"
	},
	compute(all, pair, options) {
		if (pair.alignment.offset === null) return notApplicable(pair.alignment.reason === "no-power" ? "no-channel" : "too-short", {
			channel: "power",
			seconds: 0,
			needed: options.leastSeconds
		});
		const power = compare$1(all, pair, "power", options.leastWatts, options);
		const cadence = compare$1(all, pair, "cadence", options.leastRpm, options);
		const found = [power, cadence].filter((one) => one !== null);
		if (found.length === 0) return notApplicable("no-detail");
		const best = found.reduce((a, b) => b.correlation > a.correlation ? b : a);
		const samples = Math.max(4, best.seconds / options.secondsPerSample);
		const half = 1.96 / Math.sqrt(samples - 3 || 1);
		const z = Math.atanh(Math.min(best.correlation, .999999));
		const unequal = detailRatio(all.primary.channels.power, pair.series.channels.power, all.window) > options.mostDetailRatio;
		return measured(best.correlation, "r", [Math.tanh(z - half), Math.tanh(z + half)], Math.round(samples), {
			stretches: [all.window],
			circumstances: [...unequal ? ["unequal averaging"] : [], ...cadence === null ? ["power only"] : []],
			details: {
				channel: best.channel,
				...power === null ? {} : { power: {
					value: power.correlation,
					unit: "r"
				} },
				...cadence === null ? {} : { cadence: {
					value: cadence.correlation,
					unit: "r"
				} },
				seconds: {
					value: best.seconds,
					unit: "s"
				}
			}
		});
	}
});
/** Correlation of detail in one channel; null where either side lacks it or shows no detail to speak of. */
function compare$1(all, pair, channel, leastSpread, options) {
	const ownColumn = all.primary.channels[channel];
	const otherColumn = pair.series.channels[channel];
	if (ownColumn === void 0 || otherColumn === void 0) return null;
	const own = cut(detailOf(ownColumn, options.detailSeconds));
	const other = cut(detailOf(otherColumn, options.detailSeconds));
	let best = null;
	for (let lag = -options.lagSeconds; lag <= options.lagSeconds; lag++) {
		let products = 0;
		let squares = 0;
		let otherSquares = 0;
		let seconds = 0;
		for (let t = Math.max(0, all.window[0], all.window[0] + lag); t < Math.min(all.window[1], other.length + lag); t++) {
			const a = own[t];
			const b = other[t - lag];
			if (Number.isNaN(a) || Number.isNaN(b)) continue;
			products += a * b;
			squares += a * a;
			otherSquares += b * b;
			seconds++;
		}
		if (seconds < options.leastSeconds) continue;
		if (Math.sqrt(squares / seconds) < leastSpread || Math.sqrt(otherSquares / seconds) < leastSpread) continue;
		const correlation = products / Math.sqrt(squares * otherSquares);
		if (best === null || correlation > best.correlation) best = {
			channel,
			correlation,
			seconds
		};
	}
	return best;
}
/**
* Cuts what stands out beyond three spreads (median absolute deviation): the few edges of a workout or an
* attack, which riders share, must not outweigh the many strokes, which they do not.
*/
function cut(detail) {
	const sizes = detail.filter((value) => !Number.isNaN(value)).map(Math.abs).sort();
	const most = 3 * (sizes[sizes.length >> 1] ?? 0) / .6745;
	return detail.map((value) => Math.max(-most, Math.min(most, value)));
}
// src/measure/shared-seconds.ts
/**
* Longest stretch that this recording has in common with another rider's, sample by sample, in power or in
* cadence (which stays when somebody rescales power): an exact length. Compared is content, wherever in the
* two files it lies; the event says which other submissions to compare with.
*/
const sharedSeconds = defineMeasure({
	id: "shared-seconds",
	of: "recording",
	options: {
		windowSamples: number$3("shortest stretch looked for"),
		tellingShare: number$3("share of its samples at which the channel must bend"),
		distinctChanges: number$3("different changes it must hold"),
		chance: number$3("number of such stretches expected by chance, above which one counts for nothing")
	},
	compute(all, recording, options) {
		if (all.others === void 0) return notApplicable("no-event");
		const longest = all.others.flatMap((other) => [common(recording, other, "power", options), common(recording, other, "cadence", options)]).filter((one) => one !== null).sort((a, b) => b.length - a.length)[0];
		if (longest === void 0) return exact(0, "s", recording.length, { details: { other: "none" } });
		const { length, own, theirs, channel, other, total } = longest;
		return exact(length, "s", recording.length, {
			stretches: [[own, own + length]],
			details: {
				other: other.name,
				channel,
				total: {
					value: total,
					unit: "s"
				},
				first: own
			},
			charts: [{
				kind: "copies",
				id: "shared:primary",
				copies: [{
					at: [own, theirs],
					seconds: length,
					first: readings$1(recording.channels[channel], own, own + length),
					second: readings$1(other[channel], theirs, theirs + length)
				}]
			}]
		});
	}
});
function common({ channels, length }, other, channel, options) {
	const own = channels[channel];
	const theirs = other[channel];
	if (own === void 0 || theirs === void 0) return null;
	const joined = new Float64Array(length + 1 + theirs.length).fill(NaN);
	joined.set(own);
	joined.set(theirs, length + 1);
	const copies = copiesIn(joined, length + 1, options);
	const longest = copies[0];
	if (longest === void 0) return null;
	return {
		channel,
		other,
		own: longest.first,
		theirs: longest.second - length - 1,
		length: longest.length,
		total: copies.reduce((sum, copy) => sum + copy.length, 0)
	};
}
// src/measure/speed-curve-scatter.ts
/** Blocks of the ride that are left out one at a time for the interval. */
const blocks$1 = 10;
/**
* How far power scatters around a fixed curve of speed, in percent of its mean: a cubic in speed, with a
* term for the change of speed where the inertia that it stands for is a flywheel's and not a rider's (a
* game that works speed out from power, and a road, leave a rider's). Measured power scatters widely:
* gradient, wind, bunch and legs do not ask the speed. The interval leaves out tenths of the ride.
*/
const speedCurveScatter = defineMeasure({
	id: "speed-curve-scatter",
	of: "recording",
	options: {
		rows: number$3("seconds used, evenly chosen over the ride"),
		trimShare: number$3("share of them, the furthest from a first curve, left out of the second"),
		minimumSpeed: number$3("speed from which seconds count, m/s"),
		minimumRows: number$3("such seconds below which nothing is said"),
		minimumSpread: number$3("standard deviation that power must have of its own, % of its mean"),
		shownBelow: number$3("scatter below which the curve is shown, %"),
		lightestRider: number$3("inertia from which the change of speed may be a rider on a bicycle, kg"),
		heaviestRider: number$3("and up to which, kg")
	},
	compute(all, recording, options) {
		const { power, speed } = recording.channels;
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		if (speed === void 0) return notApplicable("no-channel", { channel: "speed" });
		const rows = rowsOf(recording, power, speed, options);
		if (rows.watts.length < options.minimumRows) return notApplicable("too-short", {
			seconds: rows.watts.length,
			needed: options.minimumRows
		});
		const mean = rows.watts.reduce((a, b) => a + b, 0) / rows.watts.length;
		const own = spread(rows.watts.map((watts) => watts - mean));
		if (100 * own < options.minimumSpread * mean) return notApplicable("cannot-separate");
		const fit = curveOf(rows, options);
		if (fit === null) return notApplicable("cannot-separate");
		const percent = (residuals) => 100 * spread(residuals) / mean;
		const value = percent(fit.residuals);
		return measured(value, "%", intervalOf(value, fit.residuals, percent), rows.watts.length, {
			details: {
				spread: {
					value: 100 * own / mean,
					unit: "%"
				},
				...fit.inertia === null ? {} : { inertia: {
					value: fit.inertia,
					unit: "kg"
				} }
			},
			charts: value < options.shownBelow ? [chart(`speed:${subjectOf(all, recording)}`, rows, fit)] : []
		});
	}
});
function rowsOf(series, power, speed, options) {
	const chosen = [];
	for (let i = 1; i < series.length; i++) if (series.state[i] === SecondState.recorded && series.state[i - 1] === SecondState.recorded && power[i] > 0 && speed[i] >= options.minimumSpeed && speed[i - 1] > 0) chosen.push(i);
	const step = Math.max(1, chosen.length / options.rows);
	const rows = Array.from({ length: Math.floor(chosen.length / step) }, (_, k) => chosen[Math.floor(k * step)]);
	return {
		watts: Float64Array.from(rows, (i) => power[i]),
		speed: Float64Array.from(rows, (i) => speed[i]),
		push: Float64Array.from(rows, (i) => speed[i] * (speed[i] - speed[i - 1]))
	};
}
/** The curve that power keeps to most closely, without or with the change of speed. */
function curveOf({ watts, speed, push }, options) {
	const columns = [
		speed.map(() => 1),
		speed,
		speed.map((v) => v * v),
		speed.map((v) => v * v * v)
	];
	const still = trimmedFit(columns, watts, options.trimShare);
	if (still === null) return null;
	const moving = trimmedFit([...columns, push], watts, options.trimShare);
	const inertia = moving?.coefficients[4] ?? NaN;
	const flywheel = inertia > 0 && (inertia < options.lightestRider || inertia > options.heaviestRider);
	const best = moving !== null && flywheel ? moving : still;
	const [a, b, c, d] = best.coefficients;
	return {
		at: (v) => a + v * (b + v * (c + v * d)),
		residuals: best.residuals,
		inertia: best === still ? null : inertia
	};
}
/** Least squares once, and again without the rows furthest off; residuals of all rows. */
function trimmedFit(columns, y, trimShare) {
	const first = leastSquares(columns, y);
	if (first === null) return null;
	const sizes = first.residuals.map(Math.abs).sort();
	const most = sizes[Math.floor((1 - trimShare) * (sizes.length - 1))];
	return leastSquares(columns, y, first.residuals.map((residual) => Math.abs(residual) <= most ? 1 : 0));
}
/** Robust standard deviation about 0. */
function spread(residuals) {
	const sizes = residuals.map(Math.abs).sort();
	return 1.4826 * (sizes[sizes.length >> 1] ?? 0);
}
/** 95 % interval, leaving out one block at a time. */
function intervalOf(value, residuals, of) {
	const reach = jackknifeReach(Array.from({ length: blocks$1 }, (_, k) => {
		const from = Math.floor(k * residuals.length / blocks$1);
		const to = Math.floor((k + 1) * residuals.length / blocks$1);
		return of(residuals.filter((_, i) => i < from || i >= to));
	}));
	return [Math.max(0, value - reach), value + reach];
}
function chart(id, { speed, watts }, curve) {
	const step = Math.max(1, Math.ceil(speed.length / 400));
	const fastest = Math.max(...speed);
	const slowest = Math.min(...speed);
	const round = (value) => Math.round(value * 100) / 100;
	return {
		kind: "speed-curve",
		id,
		points: Array.from({ length: Math.ceil(speed.length / step) }, (_, k) => ({
			speed: round(speed[k * step]),
			watts: round(watts[k * step])
		})),
		curve: Array.from({ length: 40 }, (_, k) => {
			const at = slowest + (fastest - slowest) * k / 39;
			return {
				speed: round(at),
				watts: round(curve.at(at))
			};
		})
	};
}
// src/measure/spike-count.ts
/**
* Counts records that stand alone above everything around them by more than a rider on a wheel can add
* and take away within a second. Torque alone does not tell: a false sample may come with a false cadence.
* Outdoors, one whose energy shows up as speed is left standing.
*/
const spikeCount = defineMeasure({
	id: "spike-count",
	of: "recording",
	options: {
		widestRecords: number$3("longest run of high records that counts as one spike"),
		aroundRecords: number$3("records looked at on either side"),
		aboveWatts: number$3("how far above the highest of them, at least, W"),
		aboveFactor: number$3("and at least this many times the highest of them"),
		massKg: number$3("rider and bicycle at their lightest, to turn energy into speed, kg"),
		speedShare: number$3("share of the speed due from which a sample counts as ridden")
	},
	compute(all, recording, options) {
		const records = recordsOf(recording);
		if (records === null) return notApplicable("no-channel", { channel: "power" });
		const { spikes, valid, highest } = find(recording, records, options);
		const first = spikes[0];
		return exact(spikes.length, "count", valid, {
			stretches: spikes,
			details: first === void 0 ? { spikes: 0 } : {
				spikes: spikes.length,
				highest: {
					value: highest,
					unit: "W"
				},
				first: first[0]
			},
			charts: first === void 0 ? [] : [closeUps$1(`spikes:${subjectOf(all, recording)}`, recording, spikes)]
		});
	}
});
function find(recording, records, options) {
	const { at, power, broken } = records;
	const outdoors = recording.recording.indoors === false;
	const spikes = [];
	let valid = 0;
	let highest = 0;
	for (let i = 0; i < power.length; i++) {
		const watts = power[i];
		if (Number.isNaN(watts)) continue;
		valid++;
		if (broken[i] === 1 || !(watts - power[i - 1] >= options.aboveWatts)) continue;
		const width = widthOf$1(power, i, options);
		if (width === 0 || outdoors && becameSpeed(recording, records, i, width, options)) continue;
		for (let k = 0; k < width; k++) highest = Math.max(highest, power[i + k]);
		spikes.push([at[i], at[i + width - 1] + 1]);
		i += width - 1;
	}
	return {
		spikes,
		valid,
		highest
	};
}
/** Records until it is over; 0 when its surroundings rise with it. */
function widthOf$1(power, from, options) {
	const before = highestOf(power, from - options.aroundRecords, from);
	let lowest = Infinity;
	for (let width = 1; width <= options.widestRecords; width++) {
		lowest = Math.min(lowest, power[from + width - 1]);
		const after = highestOf(power, from + width, from + width + options.aroundRecords);
		const around = Math.max(before, after);
		if (lowest - around >= options.aboveWatts && lowest >= options.aboveFactor * around) return width;
	}
	return 0;
}
/** Highest value that is there, at least 0. */
function highestOf(power, from, to) {
	let highest = 0;
	for (let i = Math.max(0, from); i < to && i < power.length; i++) if (power[i] > highest) highest = power[i];
	return highest;
}
/** Whether speed rose by a fair share of what the extra energy would make of it. */
function becameSpeed({ channels: { speed } }, { at }, from, width, options) {
	if (speed === void 0) return false;
	const before = speed[at[from] - 1];
	const after = speed[at[from + width]];
	const due = Math.sqrt(before * before + 2 * options.aboveWatts * width / options.massKg) - before;
	return after - before >= options.speedShare * due;
}
// src/measure/sprint-disproportion.ts
/**
* How far the race's sprint stands above the rider's best past sprint, beyond what the race's longer bests
* stand above theirs, in percent: the longer duration that explains it best counts. A stronger rider and a
* meter that reads high throughout raise both; a meter that reads sprints high raises the sprint alone.
*/
const sprintDisproportion = defineMeasure({
	id: "sprint-disproportion",
	of: "rider",
	options: {
		sprint: number$3("duration of the sprint, s"),
		longer: numbers("durations that it is held against, s"),
		near: number$3("share of the best past sprint from which a past ride holds one as hard"),
		fewest: number$3("fewest past rides with such a sprint"),
		sprintRatio: number$3("best past sprint over the best of the longest duration below which nobody sprinted"),
		spread: number$3("SD between the best sprint of a history and that of an honest race, %")
	},
	compute(all, _target, options) {
		const { history, primary } = all;
		if (history === null) return notApplicable("no-history");
		if (primary.channels.power === void 0) return notApplicable("no-channel", { channel: "power" });
		const { rides, profile } = history;
		const best = (seconds) => highest$38(rides, profile.durations.indexOf(seconds), ({ bests }) => bests);
		const pastSprint = best(options.sprint);
		const at = profile.durations.indexOf(options.sprint);
		const hard = rides.filter(({ bests }) => (bests[at] ?? 0) >= options.near * pastSprint).length;
		const longest = best(options.longer.at(-1));
		if (!(longest > 0) || hard < options.fewest || pastSprint < options.sprintRatio * longest) return notApplicable("history-too-thin", {
			windows: longest > 0 ? hard : 0,
			needed: options.fewest
		});
		const race = meanMaximal(primary.channels.power, [options.sprint, ...options.longer], ...all.window);
		const peak = race.watts[0];
		if (!(peak > 0)) return notApplicable("no-power-flow");
		const level = options.longer.map((seconds, k) => Math.max(1, (race.watts[k + 1] || 0) / best(seconds))).reduce((a, b) => Math.max(a, b));
		const honest = {
			centre: 0,
			spread: options.spread
		};
		return exact(100 * (peak / pastSprint / level - 1), "%", hard, {
			stretches: [[race.from[0], race.from[0] + options.sprint]],
			expected: {
				declared: honest,
				field: honest
			},
			details: {
				sprint: {
					value: options.sprint,
					unit: "s"
				},
				peak: {
					value: peak,
					unit: "W"
				},
				past: {
					value: pastSprint,
					unit: "W"
				},
				level: {
					value: 100 * (level - 1),
					unit: "%"
				},
				rides: hard
			}
		});
	}
});
// src/measure/pair/efforts.ts
/** The sprints among the sections that are whole on both meters, with room around them inside the window. */
function effortsOf(sections, own, other, [from, to], roomSeconds) {
	return sections.filter(({ kind }) => kind === "sprint").map(({ stretch: core }) => ({
		core,
		stretch: [Math.max(from, core[0] - roomSeconds), Math.min(to, core[1] + roomSeconds)]
	})).filter(({ stretch }) => isWhole(own, stretch) && isWhole(other, stretch));
}
function isWhole(column, [from, to]) {
	for (let t = from; t < to; t++) if (Number.isNaN(column[t])) return false;
	return true;
}
// src/measure/sprint-excess.ts
/**
* How much more the primary reads above the second in sprints than over the rest of the race: surplus work
* beyond the steady ratio, in percent of the work between the sprint's edges. The surplus is summed from a
* few seconds before the sprint until both meters are back, so that lag and averaging cancel. The interval comes from the sprints themselves and never falls below the scatter
* of stretches of the same length elsewhere in the race; how far single sprints of honest meters lie
* apart is stated beside it, and does not shrink with their number.
*/
const sprintExcess = defineMeasure({
	id: "sprint-excess",
	of: "pair",
	options: {
		roomSeconds: number$3("room before and after for lag and averaging, s"),
		shortSeconds: number$3("typical sprint below which averaging decides too much, s"),
		mostDetailRatio: number$3("ratio of second-to-second variation above which one meter averages far longer"),
		declaredSpread: number$3("honest excess between two meters within their claims, one standard deviation, %"),
		fieldSpread: number$3("honest excess between two meters as found in the field, one standard deviation, %")
	},
	circumstances: {
		"short sprints": "the sprints are so short that averaging decides how high they read",
		"unequal averaging": "one meter averages over many more seconds than the other"
	},
	compute(all, pair, options) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const own = all.primary.channels.power;
		const other = pair.series.channels.power;
		const efforts = effortsOf(all.sections, own, other, all.window, options.roomSeconds);
		if (efforts.length === 0) return notApplicable("too-few-efforts", {
			efforts: 0,
			needed: 1
		});
		const rest = restOf(own, other, all.window, efforts);
		const placebo = scatterOf(own, other, rest, typicalLength(efforts));
		if (placebo === null) return notApplicable("too-few-blocks", {
			blocks: rest.length,
			needed: 5
		});
		const excesses = efforts.map((effort) => excessOf(own, other, effort, placebo.level));
		const { mean, error, reach } = meanOfEfforts(excesses, placebo.spread, placebo.count);
		const seconds = efforts.map(({ core }) => core[1] - core[0]).sort((a, b) => a - b)[efforts.length >> 1];
		const circumstances = [...seconds < options.shortSeconds ? ["short sprints"] : [], ...detailRatio(own, other, all.window) > options.mostDetailRatio ? ["unequal averaging"] : []];
		return measured(mean, "%", [mean - reach * error, mean + reach * error], efforts.length, {
			stretches: efforts.map(({ stretch }) => stretch),
			expected: {
				declared: {
					centre: 0,
					spread: Math.hypot(options.declaredSpread, error)
				},
				field: {
					centre: 0,
					spread: Math.hypot(options.fieldSpread, error)
				}
			},
			circumstances,
			details: {
				efforts: efforts.length,
				steady: {
					value: 100 * (placebo.level - 1),
					unit: "%"
				},
				highest: {
					value: Math.max(...excesses),
					unit: "%"
				},
				seconds: {
					value: seconds,
					unit: "s"
				}
			},
			charts: [effortsChart(pair.subject, own, other, efforts, excesses)]
		});
	}
});
/** Stretches of the race outside the sprints. */
function restOf(own, other, [from, to], efforts) {
	const inEffort = new Uint8Array(own.length);
	for (const { stretch } of efforts) inEffort.fill(1, stretch[0], stretch[1]);
	const rest = [];
	for (let t = from; t < to; t++) if (inEffort[t] === 0 && own[t] > 0 && other[t] > 0) rest.push(t);
	return rest;
}
function typicalLength(efforts) {
	const lengths = efforts.map(({ stretch }) => stretch[1] - stretch[0]).sort((a, b) => a - b);
	return lengths[lengths.length >> 1];
}
/** Ratio of work over the rest, and how stretches as long as a sprint scatter around it, %. */
function scatterOf(own, other, rest, length) {
	let ownAll = 0;
	let otherAll = 0;
	const pieces = [];
	for (let i = 0; i + length <= rest.length; i += length) {
		const piece = {
			own: 0,
			other: 0
		};
		for (let j = i; j < i + length; j++) {
			piece.own += own[rest[j]];
			piece.other += other[rest[j]];
		}
		ownAll += piece.own;
		otherAll += piece.other;
		pieces.push(piece);
	}
	if (pieces.length < 5) return null;
	const level = ownAll / otherAll;
	const squares = pieces.reduce((sum, piece) => sum + (piece.own / (level * piece.other) - 1) ** 2, 0);
	return {
		level,
		spread: 100 * Math.sqrt(squares / (pieces.length - 1)),
		count: pieces.length
	};
}
/** Surplus of the primary beyond the steady ratio, % of the work between the effort's edges. */
function excessOf(own, other, { stretch, core }, level) {
	let surplus = 0;
	for (let t = stretch[0]; t < stretch[1]; t++) surplus += own[t] - level * other[t];
	let work = 1;
	for (let t = core[0]; t < core[1]; t++) work += level * other[t];
	return 100 * surplus / work;
}
function meanOfEfforts(excesses, placebo, placeboCount) {
	const n = excesses.length;
	const mean = excesses.reduce((a, b) => a + b, 0) / n;
	const own = n < 3 ? 0 : Math.sqrt(excesses.reduce((sum, excess) => sum + (excess - mean) ** 2, 0) / (n - 1));
	const spread = Math.max(own, placebo);
	const freedom = own > placebo ? n - 1 : placeboCount - 1;
	return {
		mean,
		error: spread / Math.sqrt(n),
		reach: studentQuantile(.975, freedom)
	};
}
/** As many sprints as a reader will look at, the largest excess first. */
const shown$1 = 12;
function effortsChart(subject, own, other, efforts, excesses) {
	const readings = (column, [from, to]) => Array.from(column.subarray(from, to), (value) => Number.isNaN(value) ? null : value);
	const largest = [...efforts.map(({ stretch, core }, i) => ({
		from: stretch[0],
		primary: readings(own, stretch),
		second: readings(other, stretch),
		peakPrimary: bestMean(own, stretch),
		peakSecond: bestMean(other, stretch),
		excess: excesses[i],
		seconds: core[1] - core[0]
	}))].sort((a, b) => Math.abs(b.excess) - Math.abs(a.excess)).slice(0, shown$1);
	return {
		kind: "efforts",
		id: `efforts ${subject}`,
		subject,
		efforts: largest.sort((a, b) => a.from - b.from)
	};
}
/** Best mean of five seconds within a stretch, W. */
function bestMean(column, [from, to]) {
	const length = Math.min(5, to - from);
	let sum = 0;
	let best = 0;
	for (let t = from; t < to; t++) {
		sum += column[t];
		if (t - from >= length) sum -= column[t - length];
		if (t - from >= length - 1) best = Math.max(best, sum / length);
	}
	return best;
}
// src/math/deming.ts
/**
* Line through points that err in both coordinates (Deming 1943). With λ = var(error of y) / var(error
* of x): slope = (s_yy - λ·s_xx + √((s_yy - λ·s_xx)² + 4λ·s_xy²)) / (2·s_xy). Intervals by the jackknife,
* centred on the estimate, t with n - 2 degrees of freedom.
*
* @returns null with fewer than 4 points or when x and y do not move together
*/
function deming(x, y, errorRatio = 1) {
	const n = x.length;
	const all = sums(x, y);
	const line = n < 4 ? null : lineOf(all, errorRatio);
	if (line === null) return null;
	let slopeSquares = 0;
	let interceptSquares = 0;
	const pseudo = Array.from({ length: n }, (_, i) => lineOf(plus(all, x[i], y[i], -1), errorRatio));
	if (pseudo.some((one) => one === null)) return null;
	const meanSlope = mean$1(pseudo.map((one) => one.slope));
	const meanIntercept = mean$1(pseudo.map((one) => one.intercept));
	for (const one of pseudo) {
		slopeSquares += (one.slope - meanSlope) ** 2;
		interceptSquares += (one.intercept - meanIntercept) ** 2;
	}
	const reach = studentQuantile(.975, n - 2) * Math.sqrt((n - 1) / n);
	const slopeHalf = reach * Math.sqrt(slopeSquares);
	const interceptHalf = reach * Math.sqrt(interceptSquares);
	return {
		...line,
		slopeInterval: [line.slope - slopeHalf, line.slope + slopeHalf],
		interceptInterval: [line.intercept - interceptHalf, line.intercept + interceptHalf]
	};
}
function sums(x, y) {
	let all = {
		n: 0,
		centre: [mean$1(x), mean$1(y)],
		x: 0,
		y: 0,
		xx: 0,
		yy: 0,
		xy: 0
	};
	for (let i = 0; i < x.length; i++) all = plus(all, x[i], y[i], 1);
	return all;
}
function plus(to, x, y, sign) {
	const dx = x - to.centre[0];
	const dy = y - to.centre[1];
	return {
		n: to.n + sign,
		centre: to.centre,
		x: to.x + sign * dx,
		y: to.y + sign * dy,
		xx: to.xx + sign * dx * dx,
		yy: to.yy + sign * dy * dy,
		xy: to.xy + sign * dx * dy
	};
}
function lineOf({ n, centre, x, y, xx, yy, xy }, errorRatio) {
	const sxx = xx - x * x / n;
	const syy = yy - y * y / n;
	const sxy = xy - x * y / n;
	if (!(Math.abs(sxy) > 1e-12 * Math.sqrt(sxx * syy))) return null;
	const difference = syy - errorRatio * sxx;
	const slope = (difference + Math.sqrt(difference ** 2 + 4 * errorRatio * sxy ** 2)) / (2 * sxy);
	return {
		slope,
		intercept: centre[1] + y / n - slope * (centre[0] + x / n)
	};
}
function mean$1(values) {
	let sum = 0;
	for (let i = 0; i < values.length; i++) sum += values[i];
	return sum / values.length;
}
// src/measure/torque-offset.ts
/** N·m times rpm, in W. */
const wattsPerTorque = 2 * Math.PI / 60;
/**
* Constant torque between two meters, N·m, as a zero offset that was not done leaves it: torque of the
* primary against torque of the second over blocks, a line through points that err in both (1 N·m is
* 9.4 W at 90 rpm). Which meter errs more is not known, so the interval covers every error ratio given.
*/
const torqueOffset = defineMeasure({
	id: "torque-offset",
	of: "pair",
	options: {
		blockSeconds: number$3("length of a block, s"),
		leastBlocks: number$3("fewest blocks that make a line"),
		leastRange: number$3("least ratio of high to low power: without a range a gain and an offset look alike"),
		errorRatios: numbers("ratios of the error variances of the two meters that are thought possible")
	},
	compute(all, pair, options) {
		const closed = gate(pair);
		if (closed !== null) return closed;
		const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
		if (blocks.count < options.leastBlocks) return notApplicable("too-few-blocks", {
			blocks: blocks.count,
			needed: options.leastBlocks
		});
		if (blocks.cadence.some((rpm) => !(rpm > 0))) return notApplicable("no-channel", { channel: "cadence" });
		const sorted = Array.from(blocks.other).sort((a, b) => a - b);
		if (quantileSorted(sorted, .95) < options.leastRange * quantileSorted(sorted, .05)) return notApplicable("narrow-range", { what: "power" });
		const torque = (watts) => watts.map((w, i) => w / (blocks.cadence[i] * wattsPerTorque));
		const own = torque(blocks.own);
		const other = torque(blocks.other);
		const lines = options.errorRatios.map((errorRatio) => deming(other, own, errorRatio));
		if (lines.some((line) => line === null)) return notApplicable("narrow-range", { what: "power" });
		const middle = lines[lines.length >> 1];
		const low = Math.min(...lines.map((line) => line.interceptInterval[0]));
		const high = Math.max(...lines.map((line) => line.interceptInterval[1]));
		const rpm = blocks.cadence.reduce((a, b) => a + b, 0) / blocks.count;
		return measured(middle.intercept, "N·m", [low, high], blocks.count, {
			stretches: [all.window],
			details: {
				watts: {
					value: middle.intercept * rpm * wattsPerTorque,
					unit: "W"
				},
				rpm: {
					value: rpm,
					unit: "rpm"
				},
				gain: {
					value: 100 * (middle.slope - 1),
					unit: "%"
				}
			}
		});
	}
});
// src/math/torque.ts
/** Mean crank torque of a turn (N·m) from power (W) and cadence (rpm): P / ω. */
function crankTorque(watts, rpm) {
	return watts / (rpm * 2 * Math.PI / 60);
}
// src/measure/torque-share.ts
/**
* The highest crank torque that was held for some seconds at a steady cadence, in percent of the highest
* that people reach at that cadence: a line that falls with cadence, raised with body mass.
*/
const torqueShare = defineMeasure({
	id: "torque-share",
	of: "recording",
	options: {
		standstill: number$3("torque that people reach at a standstill, N·m"),
		slope: number$3("fall of it with cadence, N·m per rpm"),
		massKg: number$3("body mass above which it grows in proportion, kg"),
		holdSeconds: number$3("seconds it must be held"),
		leastCadence: number$3("cadence below which it is not judged, rpm"),
		steadyCadence: number$3("range of cadence within those seconds that counts as steady, rpm"),
		leastSeconds: number$3("seconds with power and cadence below which nothing is said")
	},
	compute(all, series, options) {
		const { power, cadence } = series.channels;
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		if (cadence === void 0) return notApplicable("no-channel", { channel: "cadence" });
		const heavier = Math.max(1, (all.rider.massKg ?? 0) / options.massKg);
		const limitAt = (rpm) => heavier * (options.standstill - options.slope * rpm);
		const hold = options.holdSeconds;
		let judged = 0;
		let most = {
			share: 0,
			rpm: options.leastCadence,
			at: 0
		};
		for (let at = 0; at + hold <= series.length; at++) {
			if (!isSteady(series, cadence, at, options)) continue;
			const share = heldShare(power, cadence, at, at + hold, limitAt);
			if (Number.isNaN(share)) continue;
			judged++;
			if (share > most.share) most = {
				share,
				rpm: meanOf$2(cadence, at, at + hold),
				at
			};
		}
		if (judged < options.leastSeconds) return notApplicable("no-power-flow");
		const possible = limitAt(most.rpm);
		return exact(100 * most.share, "%", judged, {
			stretches: [[most.at, most.at + hold]],
			details: {
				torque: {
					value: most.share * possible,
					unit: "N·m"
				},
				cadence: {
					value: most.rpm,
					unit: "rpm"
				},
				possible: {
					value: possible,
					unit: "N·m"
				},
				seconds: {
					value: hold,
					unit: "s"
				}
			}
		});
	}
});
/** Recorded throughout, turning fast enough, and evenly: a cadence that lags behind power makes false torque. */
function isSteady({ state }, cadence, at, options) {
	let lowest = Infinity;
	let highest = -Infinity;
	for (let i = at; i < at + options.holdSeconds; i++) {
		if (state[i] !== SecondState.recorded || !(cadence[i] >= options.leastCadence)) return false;
		lowest = Math.min(lowest, cadence[i]);
		highest = Math.max(highest, cadence[i]);
	}
	return highest - lowest <= options.steadyCadence;
}
/** The share of the possible torque that was reached in every second; NaN where power is missing. */
function heldShare(power, cadence, from, to, limitAt) {
	let least = Infinity;
	for (let i = from; i < to; i++) {
		const share = crankTorque(power[i], cadence[i]) / limitAt(cadence[i]);
		if (Number.isNaN(share)) return share;
		least = Math.min(least, share);
	}
	return least;
}
const meanOf$2 = (column, from, to) => column.subarray(from, to).reduce((a, b) => a + b, 0) / (to - from);
// src/measure/recording/totals.ts
/** The totals of power and time that the file states and its samples can be held against. */
function totalsOf(series, mostMissing) {
	const { power } = series.recording.channels;
	const times = duration$1(series);
	if (power === void 0) return times;
	const sums = sumUp(series, power);
	if (sums.records === 0) return times;
	return [
		...meanPower$2(series, sums, mostMissing),
		...highest$37(series, power),
		...work(series, sums, mostMissing),
		...times
	];
}
function sumUp(series, power) {
	const { cadence, speed } = series.recording.channels;
	const sums = {
		records: 0,
		sum: 0,
		nonzero: 0,
		pedalling: 0,
		pedallingSum: 0,
		moving: 0,
		movingSum: 0,
		seconds: 0,
		secondsSum: 0
	};
	for (let i = 0; i < power.length; i++) {
		const watts = power[i];
		if (Number.isNaN(watts)) continue;
		sums.records++;
		sums.sum += watts;
		if (watts > 0) sums.nonzero++;
		if (cadence !== void 0 && cadence[i] > 0) {
			sums.pedalling++;
			sums.pedallingSum += watts;
		}
		if (speed !== void 0 && speed[i] > 0) {
			sums.moving++;
			sums.movingSum += watts;
		}
	}
	const grid = series.channels.power ?? power;
	for (let i = 0; i < series.length; i++) {
		if (!(series.state[i] === SecondState.recorded || series.state[i] === SecondState.bridged) || Number.isNaN(grid[i])) continue;
		sums.seconds++;
		sums.secondsSum += grid[i];
	}
	return sums;
}
const exactly = (definition, value) => ({
	definition,
	low: value,
	high: value
});
/** With and without zeros, coasting, standing, pauses, and the seconds that the file does not hold. */
function meanPower$2(series, sums, mostMissing) {
	const { meanPower: stated, timerS, elapsedS } = series.recording.totals;
	if (stated === void 0) return [];
	const over = (definition, sum, count) => count > 0 ? [exactly(definition, sum / count)] : [];
	return [{
		total: "mean power",
		unit: "W",
		stated,
		definitions: [
			...over("all records", sums.sum, sums.records),
			...over("zeros left out", sums.sum, sums.nonzero),
			...over("cranks turning", sums.pedallingSum, sums.pedalling),
			...over("under way", sums.movingSum, sums.moving),
			...over("every second", sums.secondsSum, sums.seconds),
			...over("over the time of the timer", sums.secondsSum, timerS ?? 0),
			...over("over the time elapsed", sums.secondsSum, elapsedS ?? 0),
			...missing(sums, timerS, mostMissing).map(({ seconds, most }) => ({
				definition: "with the seconds that the file does not hold",
				low: sums.secondsSum / (sums.seconds + seconds),
				high: (sums.secondsSum + most) / (sums.seconds + seconds)
			}))
		]
	}];
}
/** Seconds that the timer counted and the file does not hold, and the most work (J) they can have held. */
function missing(sums, timerS, mostMissing) {
	const seconds = (timerS ?? 0) - sums.seconds;
	if (seconds < 1 || seconds > mostMissing * (timerS ?? 0)) return [];
	return [{
		seconds,
		most: 2 * seconds * sums.secondsSum / sums.seconds
	}];
}
/**
* A highest power above every sample is everyday: meters send more readings than are recorded. One below
* may leave single samples out, or be the highest mean of three.
*/
function highest$37(series, power) {
	const stated = series.recording.totals.maxPower;
	if (stated === void 0) return [];
	let single = 0;
	let pair = 0;
	let three = 0;
	for (let i = 0; i < power.length; i++) {
		const here = power[i];
		const next = power[i + 1];
		const mean = (here + next + power[i + 2]) / 3;
		if (here > single) single = here;
		if (here > pair && next > pair) pair = Math.min(here, next);
		if (mean > three) three = mean;
	}
	return [{
		total: "highest power",
		unit: "W",
		stated,
		definitions: [
			{
				definition: "highest record, or above",
				low: single,
				high: Number.POSITIVE_INFINITY
			},
			exactly("single samples left out", pair),
			exactly("highest mean of three", three)
		]
	}];
}
function work(series, sums, mostMissing) {
	const { workJ, meanPower: mean, timerS } = series.recording.totals;
	if (workJ === void 0) return [];
	return [{
		total: "work",
		unit: "kJ",
		stated: workJ / 1e3,
		definitions: [
			exactly("all records", sums.sum / 1e3),
			exactly("every second", sums.secondsSum / 1e3),
			...mean === void 0 || timerS === void 0 ? [] : [exactly("mean over the time of the timer", sums.sum / sums.records * timerS / 1e3)],
			...missing(sums, timerS, mostMissing).map(({ most }) => ({
				definition: "with the seconds that the file does not hold",
				low: sums.secondsSum / 1e3,
				high: (sums.secondsSum + most) / 1e3
			}))
		]
	}];
}
/** A stated time may leave out pauses, standing and coasting, and count what the file does not hold. */
function duration$1(series) {
	const { timerS, elapsedS } = series.recording.totals;
	const stated = Math.max(timerS ?? 0, elapsedS ?? 0);
	if (stated === 0) return [];
	const { speed, cadence, power } = series.recording.channels;
	const above = (column) => column?.reduce((count, value) => value > 0 ? count + 1 : count, 0) || Number.POSITIVE_INFINITY;
	return [{
		total: "duration",
		unit: "s",
		stated,
		definitions: [{
			definition: "riding alone, or more",
			low: Math.min(series.recording.time.length, above(speed), above(cadence), above(power)),
			high: Number.POSITIVE_INFINITY
		}]
	}];
}
// src/measure/total-discrepancy.ts
/**
* How far the file's own totals lie from its samples, in percent of the nearest value that an honest
* definition gives; the furthest of them counts. Rounding and cutting to whole units is allowed for.
*/
const totalDiscrepancy = defineMeasure({
	id: "total-discrepancy",
	of: "recording",
	options: { mostMissing: number$3("share of the timer that may be missing from the samples and still explain a total") },
	circumstances: { unfinished: "the file is damaged or joined of several, so that its totals may belong to other samples" },
	compute(all, recording, { mostMissing }) {
		const totals = totalsOf(recording, mostMissing).filter(({ stated }) => stated > 0);
		if (totals.length === 0) return notApplicable("no-totals");
		const rows = totals.map((total) => ({
			...total,
			off: distance(total)
		}));
		const furthest = rows.reduce((a, b) => b.off > a.off ? b : a);
		const nearest = nearestOf(furthest);
		return exact(furthest.off, "%", rows.length, {
			circumstances: recording.recording.defects.some(({ id }) => unfinished.has(id)) ? ["unfinished"] : [],
			details: {
				total: furthest.total,
				stated: {
					value: furthest.stated,
					unit: furthest.unit
				},
				nearest: {
					value: bounded(furthest.stated, nearest),
					unit: furthest.unit
				},
				definition: nearest.definition,
				totals: rows.length
			},
			charts: [{
				kind: "totals",
				id: `totals:${subjectOf(all, recording)}`,
				rows: rows.map(({ total, unit, stated, definitions, off }) => ({
					total,
					unit,
					stated,
					off,
					fromSamples: definitions.map((one) => ({
						definition: one.definition,
						value: bounded(stated, one)
					}))
				}))
			}]
		});
	}
});
/** Defects that part a file's totals from its samples. */
const unfinished = /* @__PURE__ */ new Set([
	"truncated",
	"never-closed",
	"chained",
	"several-sessions",
	"markup-ends-early"
]);
/** The value within a definition's range that is nearest to what is stated. */
function bounded(stated, { low, high }) {
	return Math.min(high, Math.max(low, stated));
}
function nearestOf({ stated, definitions }) {
	const apart = (one) => Math.abs(stated - bounded(stated, one));
	return definitions.reduce((a, b) => apart(b) < apart(a) ? b : a);
}
/** Percent between a total and the nearest definition, the last whole unit allowed. */
function distance(total) {
	const value = bounded(total.stated, nearestOf(total));
	const apart = Math.max(0, Math.abs(total.stated - value) - 1);
	return value > 0 ? 100 * apart / value : 100;
}
// src/measure/uncovered-share.ts
const quarter = 900;
/** Time zones reach from UTC-12 to UTC+14; two of them lie at most 26 h apart. */
const furthestSlip = 93600;
/**
* Share of the race, as the event gives it, that lies before the first or after the last second of the
* recording: an exact length. Where a clock off by whole quarters of an hour would make the recording
* cover the race, the smallest such slip is named: time zones differ by quarters, rides by chance.
*/
const uncoveredShare = defineMeasure({
	id: "uncovered-share",
	of: "recording",
	options: { slipShare: number$3("share of the race that may stay uncovered after a slip of the clock is undone") },
	circumstances: { "zone slip": "a clock set to another time zone would explain it" },
	compute(all, recording, { slipShare }) {
		const { start, finish } = all.race;
		if (start === void 0) return notApplicable("no-fact", { fact: "start" });
		if (finish === void 0) return notApplicable("no-fact", { fact: "finish" });
		const race = [Date.parse(start) / 1e3, Date.parse(finish) / 1e3];
		const seconds = race[1] - race[0];
		if (!(seconds > 0)) return notApplicable("no-fact", { fact: "finish" });
		const ride = [recording.start, recording.start + recording.length];
		const uncovered = (slip) => seconds - overlap(race, [ride[0] + slip, ride[1] + slip]);
		const value = uncovered(0) / seconds;
		const slip = value > slipShare ? slipThat((by) => uncovered(by) <= slipShare * seconds) : null;
		return exact(value, "share", seconds, {
			circumstances: slip === null ? [] : ["zone slip"],
			details: {
				late: {
					value: clamp(ride[0] - race[0], seconds),
					unit: "s"
				},
				early: {
					value: clamp(race[1] - ride[1], seconds),
					unit: "s"
				},
				race: {
					value: seconds,
					unit: "s"
				},
				slip: slip === null ? "no whole quarter of an hour" : {
					value: slip,
					unit: "s"
				}
			},
			charts: value === 0 ? [] : [{
				kind: "coverage",
				id: `window:${subjectOf(all, recording)}`,
				recording: [0, recording.length],
				window: [race[0] - recording.start, race[1] - recording.start],
				lost: [],
				paused: []
			}]
		});
	}
});
function overlap(a, b) {
	return Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
}
function clamp(seconds, most) {
	return Math.min(Math.max(0, seconds), most);
}
/** The smallest slip by whole quarters of an hour for which this holds, s. */
function slipThat(holds) {
	for (let by = quarter; by <= furthestSlip; by += quarter) {
		if (holds(by)) return by;
		if (holds(-by)) return -by;
	}
	return null;
}
// src/measure/unexplained-detail.ts
/**
* How much of the second's second-to-second detail the primary does not explain by a gain, an offset and
* a filter of three seconds: much for two meters, little for one sensor on two recorders, next to nothing
* for a recording computed from the first. Align finds the numbers; here they become a measurement.
*/
const unexplainedDetail = defineMeasure({
	id: "unexplained-detail",
	of: "pair",
	options: {},
	circumstances: {
		independent: "what is left over behaves as between two meters",
		"same sensor": "gain and detail are those of one sensor on two recorders"
	},
	compute(all, { alignment }) {
		if (!alignment.secure) return notApplicable("not-secure");
		const evidence = alignment.originEvidence;
		if (evidence === null) return notApplicable("too-short", {
			seconds: 0,
			needed: 0
		});
		const { left, gain, dynamics } = evidence;
		const seconds = all.window[1] - all.window[0];
		return measured(left, "share", [left, left], seconds, {
			stretches: [all.window],
			circumstances: alignment.origin === "derived" ? [] : [alignment.origin],
			details: {
				gain: {
					value: gain,
					unit: "ratio"
				},
				dynamics: {
					value: Number.isFinite(dynamics) ? dynamics : 0,
					unit: "ratio"
				}
			}
		});
	}
});
// src/measure/rider/heart-windows.ts
/**
* Windows in which power varied enough for a heart to show it, each with how well heart rate followed.
*
* @param lag seconds that heart rate arrives late
*/
function heartWindows({ felt, followed, heartRate }, [from, to], lag, limits) {
	const windows = [];
	for (let start = from; start + limits.windowSeconds <= to; start += limits.windowSeconds) {
		const end = start + limits.windowSeconds;
		const { count, power, quick, squaresQuick, squares, squaresHeart, products } = moments(start, end);
		if (count < limits.leastKnown * limits.windowSeconds || !(power > 0)) continue;
		if (!(Math.sqrt(squaresQuick / count) >= limits.leastVariation * quick)) continue;
		const size = Math.sqrt(squares * squaresHeart);
		windows.push({
			stretch: [start, end],
			r: size > 0 ? products / size : 0
		});
	}
	return windows;
	/** Sums of squares and products around the straight trend over time, in one pass; means of power. */
	function moments(start, end) {
		let count = 0;
		let [t, q, x, y] = [
			0,
			0,
			0,
			0
		];
		let [tt, qq, xx, yy] = [
			0,
			0,
			0,
			0
		];
		let [qt, xt, yt, xy] = [
			0,
			0,
			0,
			0
		];
		for (let i = Math.max(start, lag); i < end; i++) {
			const heart = heartRate[i];
			const push = followed[i - lag];
			if (Number.isNaN(heart + push)) continue;
			const time = i - start;
			const now = felt[i];
			count++;
			t += time;
			tt += time * time;
			q += now;
			qq += now * now;
			qt += now * time;
			x += push;
			xx += push * push;
			xt += push * time;
			y += heart;
			yy += heart * heart;
			yt += heart * time;
			xy += push * heart;
		}
		const around = (sum, a, b) => sum - a * b / count;
		const times = around(tt, t, t);
		const [tq, tx, ty] = [
			around(qt, q, t),
			around(xt, x, t),
			around(yt, y, t)
		];
		return {
			count,
			power: x / count,
			quick: q / count,
			squaresQuick: Math.max(0, around(qq, q, q) - tq * tq / times),
			squares: Math.max(0, around(xx, x, x) - tx * tx / times),
			squaresHeart: Math.max(0, around(yy, y, y) - ty * ty / times),
			products: around(xy, x, y) - tx * ty / times
		};
	}
}
// src/measure/unresponsive-share.ts
/**
* Share of the windows with changing power in which heart rate does not answer to it, as a first-order
* system with lag and slow drift would. Seconds in which the strap dropped out, hung, or a sensor counted
* the cadence are taken out first and said: they are faults of sensors. The interval is Wilson's (1927).
*/
const unresponsiveShare = defineMeasure({
	id: "unresponsive-share",
	of: "recording",
	options: {
		windowSeconds: number$3("length of a window, s"),
		leastWindows: number$3("fewest windows with changing power"),
		leastKnown: number$3("share of a window in which heart rate and power must be known"),
		leastVariation: number$3("SD of power as a quick heart follows it, over its mean, from which it must answer"),
		timeConstants: numbers("time constants tried, s"),
		lags: numbers("lags tried, s"),
		leastCorrelation: number$3("correlation below which heart rate does not answer"),
		faultShare: number$3("share of the race from which a sensor fault is worth saying"),
		stuckSeconds: number$3("one heart rate for this long counts as stuck, s"),
		cadenceBeats: number$3("heart rate this close to the cadence … (bpm)"),
		cadenceSeconds: number$3("… for this long counts as the cadence, s")
	},
	circumstances: {
		"strap dropped out": "the strap dropped out for part of the race",
		"heart rate stuck": "heart rate hung at one value for part of the race",
		"cadence counted": "the sensor counted the cadence for part of the race"
	},
	compute(all, series, options) {
		const { power, heartRate } = series.channels;
		if (power === void 0) return notApplicable("no-channel", { channel: "power" });
		if (heartRate === void 0) return notApplicable("no-channel", { channel: "heartRate" });
		const faults = heartRateFaults(series, options);
		const clean = cleanHeartRate(series, faults);
		let best = [];
		let most = -Infinity;
		const felt = firstOrder(power, options.timeConstants[0]);
		for (const tau of options.timeConstants) {
			const followed = firstOrder(power, tau);
			for (const lag of options.lags) {
				const windows = heartWindows({
					felt,
					followed,
					heartRate: clean
				}, all.window, lag, options);
				const sum = windows.reduce((total, { r }) => total + r, 0);
				if (sum <= most) continue;
				most = sum;
				best = windows;
			}
		}
		const [blocks, needed] = [best.length, options.leastWindows];
		if (blocks < needed) return notApplicable("too-few-blocks", {
			blocks,
			needed
		});
		const silent = best.filter(({ r }) => r < options.leastCorrelation);
		return measured(silent.length / blocks, "share", wilson(silent.length, blocks), blocks, {
			stretches: silent.map(({ stretch }) => stretch),
			circumstances: circumstancesOf(faults, options.faultShare * (all.window[1] - all.window[0])),
			details: {
				windows: blocks,
				silent: silent.length,
				correlation: {
					value: best.reduce((sum, { r }) => sum + r, 0) / blocks,
					unit: "r"
				},
				missing: {
					value: totalLength(faults.missing),
					unit: "s"
				},
				stuck: {
					value: totalLength(faults.stuck),
					unit: "s"
				},
				cadence: {
					value: totalLength(faults.cadence),
					unit: "s"
				}
			}
		});
	}
});
function circumstancesOf({ missing, stuck, cadence }, least) {
	return [
		["strap dropped out", missing],
		["heart rate stuck", stuck],
		["cadence counted", cadence]
	].filter(([, stretches]) => totalLength(stretches) >= least).map(([name]) => name);
}
/** 95 % interval of a share by Wilson's score. */
function wilson(hits, of) {
	const z = 1.96;
	const share = hits / of;
	const middle = (share + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
	const reach = z / (1 + z ** 2 / of) * Math.sqrt(share * (1 - share) / of + z ** 2 / (4 * of ** 2));
	return [Math.max(0, middle - reach), Math.min(1, middle + reach)];
}
// src/measure/index.ts
/** Every measure, in the order of the families: recording, trace, agreement, physiology. */
const measures = [
	missingChannelCount,
	lostSeconds,
	misplacedShare,
	uncoveredShare,
	totalDiscrepancy,
	copiedSeconds,
	sharedSeconds,
	latticeExcess,
	defineMeasure({
		id: "zero-cadence-share",
		of: "recording",
		options: {
			minimumWatts: number$3("power from which a second counts as pedalling, W"),
			minimumSeconds: number$3("seconds of pedalling with a cadence below which nothing is said")
		},
		compute(_all, { channels: { power, cadence }, state, length }, options) {
			if (power === void 0) return notApplicable("no-channel", { channel: "power" });
			if (cadence === void 0) return notApplicable("no-channel", { channel: "cadence" });
			let pedalling = 0;
			let zero = 0;
			for (let i = 0; i < length; i++) {
				if (state[i] !== SecondState.recorded || !(power[i] >= options.minimumWatts)) continue;
				if (Number.isNaN(cadence[i])) continue;
				pedalling++;
				if (cadence[i] === 0) zero++;
			}
			if (pedalling < options.minimumSeconds) return notApplicable("no-power-flow");
			return exact(zero / pedalling, "share", pedalling, { details: {
				seconds: pedalling,
				zero
			} });
		}
	}),
	powerAtZeroCadence,
	flatPowerShare,
	frozenSeconds,
	spikeCount,
	averagingSeconds,
	speedCurveScatter,
	missingTraits,
	sharedDetail,
	unexplainedDetail,
	overallDifference,
	torqueOffset,
	effortSpread,
	powerDependence,
	cadenceDependence,
	sprintExcess,
	differenceTrend,
	crossingTime,
	averagingDifference,
	distanceFromOthers,
	excessOverHistory,
	latePowerExcess,
	sprintDisproportion,
	reserveShare,
	unresponsiveShare,
	massShortfall,
	torqueShare,
	excessOverRecord
];
// src/measure/all.ts
/**
* Puts every rule's measure to its subjects, in the order of the rules. A measure that throws has
* failed: that is a fault of this program, it is reported as such, and the other measures still run.
*/
function measureAll(all, rules) {
	return rules.flatMap((rule) => {
		const measure = measures.find(({ id }) => id === rule.measure);
		if (measure === void 0) throw new Error(`rule ${rule.id} names an unknown measure: ${rule.measure}`);
		return targets(all, rule).map(([subject, target]) => {
			const outcome = rule.off === void 0 ? outcomeOf(measure, all, target, rule) : notApplicable("switched-off", { why: rule.off });
			const remarks = (outcome.state === "measured" ? outcome.circumstances : []).flatMap((circumstance) => measure.circumstances[circumstance] ?? []);
			return {
				measure: measure.id,
				rule: rule.id,
				subject,
				options: rule.options,
				outcome,
				remarks
			};
		});
	});
}
function targets(all, { subjects }) {
	switch (subjects) {
		case "primary": return [["primary", all.primary]];
		case "recordings": return [["primary", all.primary], ...otherRecordings(all)];
		case "pairs": return all.seconds.length === 0 ? [["pair", null]] : all.seconds.map((pair) => [pair.subject, pair]);
		default: return [[subjects, null]];
	}
}
/** Second recordings on the primary's clock; a further meter of the primary's own file is not one. */
function otherRecordings({ primary, seconds }) {
	return seconds.filter(({ series }) => series.recording !== primary.recording).map(({ subject, series }) => [subject.replace("pair:", "second:"), series]);
}
function outcomeOf(measure, all, target, rule) {
	if (measure.of === "pair" && target === null) return notApplicable("no-second");
	try {
		return measure.compute(all, target, rule.options);
	} catch (error) {
		return {
			state: "failed",
			message: error instanceof Error ? error.message : String(error)
		};
	}
}
// src/measure/section-table.ts
/** Blocks (s) that an interval inside a section rests on: short, for sprints have room for few. */
const blockSeconds = 10;
/** A section with fewer blocks states its difference without an interval. */
const leastBlocks = 4;
/**
* What each section shows: the primary's mean power, and how each other meter on the same clock differs
* from it there, so that a reader sees where a meter is good and where not.
*/
function sectionTable(all) {
	const pairs = all.seconds.filter((pair) => gate(pair) === null);
	return all.sections.map((section) => ({
		...section,
		watts: meanPower$1(all.primary, section.stretch),
		rise: section.kind === "set-point block" ? riseTime(all.primary, section, all.sections) : null,
		differences: pairs.flatMap((pair) => differenceIn(all.primary, pair, section.stretch) ?? [])
	}));
}
function meanPower$1({ channels: { power } }, [from, to]) {
	let sum = 0;
	let count = 0;
	for (let t = from; t < to; t++) {
		const watts = power?.[t] ?? NaN;
		if (Number.isNaN(watts)) continue;
		sum += watts;
		count++;
	}
	return count === 0 ? null : Math.round(10 * sum / count) / 10;
}
function differenceIn(primary, { subject, series }, [from, to]) {
	const own = primary.channels.power;
	const other = series.channels.power;
	const blocks = [];
	for (let start = from; start < to; start += blockSeconds) {
		const block = {
			own: 0,
			other: 0
		};
		for (let t = start; t < Math.min(to, start + blockSeconds); t++) {
			if (Number.isNaN(own[t]) || Number.isNaN(other[t])) continue;
			block.own += own[t];
			block.other += other[t];
		}
		if (block.own + block.other > 0) blocks.push(block);
	}
	const ownSum = blocks.reduce((sum, block) => sum + block.own, 0);
	const otherSum = blocks.reduce((sum, block) => sum + block.other, 0);
	if (ownSum <= 0 || otherSum <= 0) return null;
	const ratio = ownSum / otherSum;
	const percent = round$1(100 * (ratio - 1));
	const n = blocks.length;
	if (n < leastBlocks) return {
		subject,
		percent,
		low: null,
		high: null
	};
	const squares = blocks.reduce((sum, block) => sum + (block.own - ratio * block.other) ** 2, 0);
	const error = Math.sqrt(squares * n / (n - 1)) / otherSum;
	const half = 100 * studentQuantile(.975, n - 1) * error * Math.sqrt(1.3 / .7);
	return {
		subject,
		percent,
		low: round$1(100 * (ratio - 1) - half),
		high: round$1(100 * (ratio - 1) + half)
	};
}
/**
* Seconds from 10 to 90 % of the step from the block before, when that one ended within half a minute;
* null where there is no such step.
*/
function riseTime({ channels: { power } }, section, all) {
	const before = all.findLast(({ kind, stretch }) => kind === "set-point block" && stretch[1] <= section.stretch[0] && section.stretch[0] - stretch[1] <= 30);
	if (before === void 0 || power === void 0) return null;
	const from = mean(power, before.stretch);
	const to = mean(power, section.stretch);
	if (!(Math.abs(to / from - 1) > .1)) return null;
	const progress = (t) => (power[t] - from) / (to - from);
	let start = before.stretch[1] - 10;
	while (start < section.stretch[1] && !(progress(start) >= .1)) start++;
	let end = start;
	while (end < section.stretch[1] && !(progress(end) >= .9)) end++;
	return end < section.stretch[1] ? end - start : null;
}
function mean(power, [from, to]) {
	let sum = 0;
	for (let t = from; t < to; t++) sum += power[t];
	return sum / (to - from);
}
const round$1 = (value) => Math.round(10 * value) / 10;
// src/problem.ts
var Problem = class Problem extends Error {
	name = "Problem";
	code;
	where;
	hint;
	constructor(parts) {
		super(parts.what);
		this.code = parts.code;
		this.where = parts.where;
		this.hint = parts.hint;
	}
	/** The same problem, placed: used where the name of the file is known, and only there. */
	at(where) {
		return new Problem({
			code: this.code,
			what: this.message,
			where: this.where === void 0 ? where : `${where} › ${this.where}`,
			...this.hint === void 0 ? {} : { hint: this.hint }
		});
	}
};
/** "where: what. hint." in one line, for a log or a terminal. The caller cleans it for its medium. */
function sentence$1(problem) {
	const place = problem.where === void 0 ? "" : `${problem.where}: `;
	const hint = problem.hint === void 0 ? "" : ` ${stopped(problem.hint)}`;
	return `${place}${stopped(problem.message)}${hint}`;
}
function stopped(text) {
	return /[.?!]$/.test(text) ? text : `${text}.`;
}
// src/normalise/grid.ts
/**
* Lays one column on the 1 s grid: records of one second are averaged (missing ones left out), bridged
* seconds carry the last value on, every other second without a record is NaN.
*/
function layColumn(column, order, state) {
	const { records, seconds } = order;
	const start = seconds[0];
	const laid = new Float64Array(state.length).fill(NaN);
	for (let i = 0; i < records.length;) {
		const second = seconds[i];
		let sum = 0;
		let count = 0;
		for (; i < records.length && seconds[i] === second; i++) {
			const value = column[records[i]];
			if (Number.isNaN(value)) continue;
			sum += value;
			count++;
		}
		if (count > 0) laid[second - start] = sum / count;
	}
	for (let i = 1; i < laid.length; i++) if (state[i] === SecondState.bridged) laid[i] = laid[i - 1];
	return laid;
}
function layColumns(columns, order, state) {
	const laid = {};
	for (const channel of channels) {
		const column = columns[channel];
		if (column !== void 0) laid[channel] = layColumn(column, order, state);
	}
	return laid;
}
// src/normalise/settings.ts
/** The numbers of normalising, each with its reason. */
const settings$2 = {
	/**
	* Records further than this (s) from their neighbours belong to another ride or a broken clock: the
	* largest body of records is kept. Longer than any café stop, shorter than a night.
	*/
	farSeconds: 21600,
	/** No grid longer than this (s): two days. A clock that jumps to 2085 must not allocate a century. */
	longestSeconds: 172800,
	/** A recorder whose records lie 2 to this many seconds apart writes irregularly ("smart recording"). */
	bridgeSeconds: 15,
	/** Share of such steps from which the recorder counts as irregular; below it, they are dropouts. */
	irregularShare: .1,
	/** A gap at least this long (s) that begins at a standstill is an automatic pause. */
	pauseSeconds: 5,
	/** Slower than this (m/s) before the gap counts as standstill. */
	standstillSpeed: 1.5
};
// src/normalise/order.ts
/**
* Puts records in order of time by one rule: sorted by time (file order where equal); the largest body
* without a gap longer than `farSeconds`; a record that shares its second with another moves into an
* empty neighbouring second, as recorders with a jittering clock need; what still shares is averaged later.
*/
function order(time) {
	const { records, backward } = sorted(time);
	const [from, to] = largestBody(time, records);
	const kept = records.subarray(from, to);
	const seconds = Float64Array.from(kept, (record) => Math.round(time[record]));
	const doubled = spreadDoubles(seconds);
	return {
		records: kept,
		seconds,
		backward,
		far: records.length - kept.length,
		doubled
	};
}
function sorted(time) {
	const records = new Int32Array(time.length);
	let count = 0;
	let backward = 0;
	let latest = -Infinity;
	for (let i = 0; i < time.length; i++) {
		const t = time[i];
		if (!Number.isFinite(t)) continue;
		records[count++] = i;
		if (t < latest) backward++;
		latest = Math.max(latest, t);
	}
	const used = records.subarray(0, count);
	if (backward > 0) used.sort((a, b) => time[a] - time[b] || a - b);
	return {
		records: used,
		backward
	};
}
function largestBody(time, records) {
	let best = [0, 0];
	let from = 0;
	for (let i = 1; i <= records.length; i++) {
		if (!(i === records.length || time[records[i]] - time[records[i - 1]] > settings$2.farSeconds || time[records[i]] - time[records[from]] >= settings$2.longestSeconds)) continue;
		if (i - from > best[1] - best[0]) best = [from, i];
		from = i;
	}
	return best;
}
/** Moves doubled records into free neighbouring seconds, in place; returns how many were doubled. */
function spreadDoubles(seconds) {
	let doubled = 0;
	for (let i = 1; i < seconds.length; i++) {
		const second = seconds[i];
		if (second !== seconds[i - 1]) continue;
		doubled++;
		const next = i + 1 < seconds.length ? seconds[i + 1] : Infinity;
		const before = i >= 2 ? seconds[i - 2] : -Infinity;
		if (next > second + 1) seconds[i] = second + 1;
		else if (before < second - 1) seconds[i - 1] = second - 1;
	}
	return doubled;
}
// src/normalise/states.ts
/**
* Says of every second without a record why it has none: a pause (stated by the file, or begun at a
* standstill), the rhythm of an irregular recorder, or missing. Seconds with a record are `recorded`.
*/
function states(recording, order) {
	const { seconds, records } = order;
	const start = seconds[0];
	const state = new Uint8Array(seconds[seconds.length - 1] - start + 1);
	const irregular = writesIrregularly(seconds);
	for (let i = 1; i < seconds.length; i++) {
		const from = seconds[i - 1] + 1;
		const to = seconds[i];
		if (to <= from) continue;
		state.fill(gapState(to - from), from - start, to - start);
		function gapState(length) {
			if (isPaused(recording.pauses, from, to)) return SecondState.paused;
			if (irregular && length < settings$2.bridgeSeconds) return SecondState.bridged;
			if (length >= settings$2.pauseSeconds && isStill(recording, records[i - 1])) return SecondState.paused;
			return SecondState.missing;
		}
	}
	return state;
}
function writesIrregularly(seconds) {
	let wide = 0;
	for (let i = 1; i < seconds.length; i++) {
		const step = seconds[i] - seconds[i - 1];
		if (step > 1 && step <= settings$2.bridgeSeconds) wide++;
	}
	return wide > settings$2.irregularShare * (seconds.length - 1);
}
/** The gap lies, in its greater part, inside a stated pause. */
function isPaused(pauses, from, to) {
	return pauses.reduce((sum, [a, b]) => sum + Math.max(0, Math.min(b, to) - Math.max(a, from)), 0) * 2 > to - from;
}
function isStill(recording, record) {
	const speed = recording.channels.speed?.[record] ?? NaN;
	if (Number.isFinite(speed)) return speed < settings$2.standstillSpeed;
	const power = recording.channels.power?.[record] ?? NaN;
	const cadence = recording.channels.cadence?.[record] ?? NaN;
	return power === 0 && !(cadence > 0);
}
// src/normalise/index.ts
/**
* Puts a recording on a regular 1 s grid and says, step by step, what was done to it. No value is
* invented: what is missing is NaN, what is carried over is marked `bridged`.
*
* @throws Problem `no-records` when no record has a time.
*/
function normalise(recording, subject) {
	const ordered = order(recording.time);
	if (ordered.records.length === 0) throw new Problem({
		code: "no-records",
		what: "no record in this file has a time",
		where: recording.name,
		hint: "Export the ride again from the head unit or app, in its original format"
	});
	const state = states(recording, ordered);
	return {
		series: {
			recording,
			start: ordered.seconds[0],
			length: state.length,
			channels: layColumns(recording.channels, ordered, state),
			state,
			extraMeters: recording.extraMeters.map(({ name, power }) => ({
				name,
				power: layColumn(power, ordered, state)
			}))
		},
		steps: log(recording, ordered, state, subject)
	};
}
function log(recording, ordered, state, subject) {
	const steps = [];
	const add = (id, values) => steps.push({
		subject,
		id,
		values
	});
	add("read", {
		format: recording.format,
		records: count$1(recording.time.length)
	});
	if (ordered.backward > 0) add("backward-steps", { count: count$1(ordered.backward) });
	if (ordered.far > 0) add("far-records-dropped", { count: count$1(ordered.far) });
	if (ordered.doubled > 0) add("doubled-seconds", { count: count$1(ordered.doubled) });
	const bridged = runs$1(state, SecondState.bridged);
	if (bridged.total > 0) add("bridged", {
		seconds: seconds(bridged.total),
		longest: seconds(bridged.longest)
	});
	const paused = runs$1(state, SecondState.paused);
	if (paused.total > 0) add("pauses", {
		count: count$1(paused.runs),
		seconds: seconds(paused.total)
	});
	const missing = runs$1(state, SecondState.missing);
	if (missing.total > 0) add("gaps", {
		missing: seconds(missing.total),
		longest: seconds(missing.longest)
	});
	for (const { name } of recording.extraMeters) add("extra-meter", { name });
	return steps;
}
const count$1 = (value) => ({
	value,
	unit: "count"
});
const seconds = (value) => ({
	value,
	unit: "s"
});
function runs$1(state, wanted) {
	let total = 0;
	let longest = 0;
	let number = 0;
	for (let i = 0, length = 0; i <= state.length; i++) if (state[i] === wanted) length++;
	else if (length > 0) {
		total += length;
		longest = Math.max(longest, length);
		number++;
		length = 0;
	}
	return {
		total,
		longest,
		runs: number
	};
}
// src/math/digest.ts
/** SHA-256 of the bytes in lower-case hex, by the web-standard API that Node and browsers share. */
async function sha256(bytes) {
	const digest = await crypto.subtle.digest("SHA-256", bytes);
	return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
}
// src/read/inflate.ts
function budgetOf(bytes) {
	return {
		left: bytes,
		whole: bytes
	};
}
/** @throws Problem `format-limits` when more is wanted than is left. */
function spend(budget, bytes) {
	budget.left -= bytes;
	if (budget.left < 0) throw tooLarge$1("what is packed in this file", budget.whole);
}
function tooLarge$1(what, most) {
	return new Problem({
		code: "format-limits",
		what: `${what} is larger than ${Math.floor(most / 2 ** 20)} MB, the most that is read`,
		hint: "Hand in the recording of this ride alone, in its original format"
	});
}
/**
* Unpacks gzip (RFC 1952) or raw deflate (RFC 1951) data, and stops as soon as more comes out than the
* budget has left: a small file can unpack to a very large one.
*
* @throws Problem `format-damaged` when the data breaks off or makes no sense, `format-limits` beyond the budget.
*/
async function inflate(packed, format, budget) {
	const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream(format)).getReader();
	const chunks = [];
	try {
		for (;;) {
			const { done, value } = await reader.read().catch(() => {
				throw new Problem({
					code: "format-damaged",
					what: "the packed data breaks off or is damaged",
					hint: "Download or pack the file again"
				});
			});
			if (done) return joined(chunks);
			spend(budget, value.length);
			chunks.push(value);
		}
	} finally {
		await reader.cancel().catch(() => void 0);
	}
}
function joined(chunks) {
	const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
	let at = 0;
	for (const chunk of chunks) {
		whole.set(chunk, at);
		at += chunk.length;
	}
	return whole;
}
// src/read/limits.ts
const MiB$1 = 1048576;
/**
* How much of a stranger's file reading agrees to take in. Each limit lies well above the largest honest
* file and well below what would exhaust a small machine.
*/
const limits$38 = {
	/** Bytes of one file, packed or not: a whole day at one record a second is about 5 MB as FIT, 40 MB as TCX. */
	fileBytes: 64 * MiB$1,
	/** Bytes of a ZIP that holds a rider's past rides: a few thousand of them. */
	archiveBytes: 512 * MiB$1,
	/** Bytes that all members of such a ZIP may unpack to, one after another. */
	archiveUnpackedBytes: 4096 * MiB$1,
	/** Members of a ZIP, recordings or not. */
	archiveMembers: 2e4,
	/** Wrappers around a recording: a ZIP of gzipped files is the deepest that exports make. */
	wrappers: 2,
	/** Recordings chained in one FIT file: one per stop and restart of a recorder. */
	fitParts: 64,
	/** FIT messages: a day has 86,400 records; heart beats and laps at most treble that. Each costs an object. */
	fitMessages: 3e5,
	/** Fields in all FIT messages together: a day of records with 40 fields each is 3.5 million. */
	fitFields: 4e6,
	/** Nesting of XML elements: a trackpoint's extensions lie nine deep. */
	xmlDepth: 64,
	/** Characters kept of one element's text: enough for any time or number. */
	xmlText: 256,
	/** Trackpoints of a TCX or GPX file: a day at five a second. */
	trackpoints: 5e5,
	/** Lines of a table: a day at ten rows a second. */
	csvLines: 1e6,
	/** Columns of a table. */
	csvColumns: 256,
	/** Lines that may stand above the headings. */
	csvPreamble: 50,
	/** Characters kept of a name that a file gives to a device or a field. */
	nameLength: 80,
	/** Columns named in the sentence that says which were found. */
	columnsNamed: 30
};
// src/read/meters.ts
/** Words beside "power" that make it something else than what a meter on this rider reads now. */
const notAMeter = /left|right|balance|phase|avg|average|mean|max|min|peak|normal|target|zone|threshold|critical|form|air|aero|wind|lap|smooth|weight|ratio|accum/i;
const named$2 = /(?:^|[^a-z])(?:power|watts?)(?:[^a-z]|$)/i;
const watts = /^(?:|w|watts?)$/i;
/** Whether a field of this name and unit (both as the file has them) may hold a meter's power in watts. */
function isMeterName(name, unit) {
	return watts.test(unit.trim()) && named$2.test(name) && !notAMeter.test(name);
}
/**
* Tells further meters from columns that only repeat one already there, or that stayed at zero because
* their meter was absent.
*/
function sortMeters(power, candidates) {
	const seen = power === void 0 ? [] : [power];
	const found = [];
	for (const candidate of candidates) {
		if (!candidate.power.some((value) => value > 0)) continue;
		if (seen.some((other) => repeats(candidate.power, other))) continue;
		seen.push(candidate.power);
		found.push(candidate);
	}
	const [first, ...rest] = found;
	return power === void 0 && first !== void 0 ? {
		extra: rest,
		standIn: first
	} : {
		extra: found,
		standIn: null
	};
}
/** Watts by which a copy may differ: one of the two was rounded to whole watts. */
const rounding = .5;
/** Share of records in which a copy must be equal: now and then a recorder refreshes only one of the two. */
const equalShare = .99;
function repeats(a, b) {
	let both = 0;
	let equal = 0;
	for (let i = 0; i < a.length; i++) {
		const difference = Math.abs(a[i] - b[i]);
		if (Number.isNaN(difference)) continue;
		both++;
		if (difference <= rounding) equal++;
	}
	return both > 0 && equal >= equalShare * both;
}
// src/read/csv/rows.ts
const delimiters = [
	";",
	"	",
	","
];
/**
* Splits a table into rows of trimmed cells (quoting as in RFC 4180) and tells `visit` of each, with the
* number of the line it begins on. Empty lines are passed over. `visit` returns false to stop.
*
* @returns the line on which a quoted cell is opened and never closed; null otherwise.
* @throws Problem `format-limits` with too many lines or columns.
*/
function eachRow(text, delimiter, visit) {
	let quote = nextQuote(text, 0);
	for (let at = 0, line = 1; at < text.length; line++) {
		if (line > limits$38.csvLines) throw tooMany$1("lines", limits$38.csvLines);
		const newline = text.indexOf("\n", at);
		let end = newline === -1 ? text.length : newline;
		let cells;
		const begins = line;
		if (quote < end) {
			const row = quotedRow(text, at, delimiter);
			if (row === null) return begins;
			cells = row.cells;
			line += countNewlines(text, at, row.end);
			end = row.end;
			quote = nextQuote(text, end);
		} else cells = text.slice(at, end).split(delimiter);
		if (cells.length > limits$38.csvColumns) throw tooMany$1("columns", limits$38.csvColumns);
		for (let i = 0; i < cells.length; i++) cells[i] = cells[i].trim();
		at = end + 1;
		if (cells.some((cell) => cell !== "") && !visit(cells, begins)) return null;
	}
	return null;
}
/** A row that holds a quote; null when it is never closed. */
function quotedRow(text, from, delimiter) {
	const cells = [];
	for (let at = from;; at++) {
		let cell = "";
		while (text[at] === "\"") {
			const close = text.indexOf("\"", at + 1);
			if (close === -1) return null;
			cell += text.slice(at + 1, close);
			at = close + 1;
			if (text[at] === "\"") cell += "\"";
		}
		const rest = at;
		while (at < text.length && text[at] !== delimiter && text[at] !== "\n") at++;
		cells.push(cell + text.slice(rest, at));
		if (text[at] !== delimiter) return {
			cells,
			end: at
		};
	}
}
function nextQuote(text, from) {
	const at = text.indexOf("\"", from);
	return at === -1 ? Number.POSITIVE_INFINITY : at;
}
function countNewlines(text, from, to) {
	let count = 0;
	for (let at = text.indexOf("\n", from); at !== -1 && at < to; at = text.indexOf("\n", at + 1)) count++;
	return count;
}
function tooMany$1(what, most) {
	return new Problem({
		code: "format-limits",
		what: `this table has more than ${most} ${what}`,
		hint: "Hand in the recording of this ride alone"
	});
}
// src/read/csv/units.ts
const by = (scale) => ({
	scale,
	offset: 0
});
const named$1 = (conversion, ...units) => units.map((unit) => [unit, conversion]);
const metres = named$1(by(1), "m", "meter", "meters", "metre", "metres");
const rate = named$1(by(1), "1min", "min1");
/** Units by channel, as `unitKey` writes them. The mile and the foot are the international ones of 1959. */
const units = {
	power: new Map([...named$1(by(1), "w", "watt", "watts"), ...named$1(by(1e3), "kw")]),
	cadence: new Map([...named$1(by(1), "rpm"), ...rate]),
	heartRate: new Map([...named$1(by(1), "bpm"), ...rate]),
	speed: new Map([
		...named$1(by(1), "ms", "mps"),
		...named$1(by(1 / 3.6), "kmh", "kph", "kmph"),
		...named$1(by(.44704), "mph")
	]),
	distance: new Map([
		...metres,
		...named$1(by(1e3), "km"),
		...named$1(by(1609.344), "mi", "mile", "miles")
	]),
	altitude: new Map([...metres, ...named$1(by(.3048), "ft", "feet")]),
	temperature: new Map([...named$1(by(1), "c", "degc", "celsius"), ...named$1({
		scale: 5 / 9,
		offset: -160 / 9
	}, "f", "degf", "fahrenheit")]),
	balance: new Map(named$1(by(1), "%", "percent", "left", "leftpercent"))
};
/** What a channel is read as when its column names no unit; said in a defect where several are in use. */
const assumedUnits = {
	speed: "m/s",
	distance: "m",
	altitude: "m",
	temperature: "°C"
};
/** Units of a column of elapsed time, in seconds. */
const timeUnits = new Map([
	...[
		"s",
		"sec",
		"secs",
		"second",
		"seconds"
	].map((unit) => [unit, 1]),
	...[
		"ms",
		"millisecond",
		"milliseconds"
	].map((unit) => [unit, .001]),
	...[
		"min",
		"mins",
		"minute",
		"minutes"
	].map((unit) => [unit, 60]),
	...[
		"hhmmss",
		"mmss",
		"utc",
		"gmt",
		"iso",
		"iso8601",
		"unix",
		"epoch"
	].map((unit) => [unit, 1])
]);
/** A unit without what people write differently: "km/h", "km·h" and "KMH" are one. */
function unitKey(unit) {
	return unit.toLowerCase().replace(/[^a-z0-9%]/g, "");
}
function conversionOf(channel, unit) {
	return units[channel].get(unitKey(unit));
}
// src/read/csv/headings.ts
const timeNames = /* @__PURE__ */ new Set([
	...[
		"time",
		"timestamp",
		"time stamp",
		"datetime",
		"date time",
		"date",
		"clock",
		"local time",
		"utc",
		"utc time"
	],
	...[
		"time of day",
		"elapsed",
		"elapsed time",
		"time elapsed",
		"duration",
		"timer",
		"t",
		"hh mm ss"
	],
	...[
		"s",
		"sec",
		"secs",
		"seconds",
		"ms",
		"milliseconds",
		"min",
		"mins",
		"minutes"
	]
]);
const positionNames = /* @__PURE__ */ new Set([...[
	"lat",
	"latitude",
	"position lat",
	"lon",
	"lng",
	"long",
	"longitude",
	"position long",
	"position lon"
]]);
/** Names of the trade, and units that stand as a name of their own. */
const channelNames$1 = new Map([
	...[
		"power",
		"watts",
		"watt",
		"w",
		"pwr"
	].map((name) => [name, "power"]),
	...[
		"cadence",
		"cad",
		"rpm"
	].map((name) => [name, "cadence"]),
	...[
		"heart rate",
		"heartrate",
		"hr",
		"bpm",
		"pulse"
	].map((name) => [name, "heartRate"]),
	...[
		"speed",
		"enhanced speed",
		"velocity"
	].map((name) => [name, "speed"]),
	...[
		"km h",
		"kmh",
		"kph",
		"mph",
		"m s",
		"mps"
	].map((name) => [name, "speed"]),
	...[
		"distance",
		"dist",
		"km",
		"miles",
		"mi"
	].map((name) => [name, "distance"]),
	...[
		"altitude",
		"enhanced altitude",
		"alt",
		"elevation",
		"ele"
	].map((name) => [name, "altitude"]),
	...["temperature", "temp"].map((name) => [name, "temperature"]),
	...[
		"balance",
		"left balance",
		"left right balance",
		"lrbalance"
	].map((name) => [name, "balance"])
]);
const bracketed = /^([^([]*)[([]([^)\]]*)[)\]]$/;
/** What a heading means: "Power (W)", "power_watts", "Heart Rate [bpm]", "km/h", "secs" … */
function meaningOf(heading) {
	const bracket = bracketed.exec(heading.trim());
	if (bracket !== null) {
		const [, name, unit] = bracket;
		return named(words(name).join(" "), unit) ?? meterOr(name, unit);
	}
	const all = words(heading);
	for (const units of [
		0,
		1,
		2
	]) {
		if (units >= all.length) break;
		const found = named(all.slice(0, all.length - units).join(" "), all.slice(all.length - units).join(""));
		if (found !== null) return found;
	}
	return meterOr(heading, "");
}
/** "Heart-Rate", "heartRate" and "heart_rate" are one. */
function words(name) {
	return name.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase().split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}
/** The meaning of a name with its unit; null when the name is none of ours or the unit is none of its units. */
function named(name, unit) {
	if (positionNames.has(name)) return { kind: "position" };
	if (timeNames.has(name)) {
		const scale = timeUnits.get(unitKey(unit === "" ? name : unit)) ?? (unit === "" ? 1 : null);
		return scale === null ? null : {
			kind: "time",
			scale
		};
	}
	const channel = channelNames$1.get(name);
	if (channel === void 0) return null;
	const conversion = conversionOf(channel, unit === "" ? name : unit) ?? null;
	return conversion === null && unit !== "" ? null : {
		kind: "channel",
		channel,
		conversion
	};
}
function meterOr(name, unit) {
	return isMeterName(name, unit) ? { kind: "meter" } : { kind: "other" };
}
/**
* Finds the headings: the first line near the top that names a time and at least one channel. The delimiter
* is the one under which most columns get a meaning.
*/
function findHeadings(text) {
	let best = null;
	for (const delimiter of delimiters) {
		const found = headingsUnder(text, delimiter);
		if (found !== null && known$1(found) > (best === null ? 0 : known$1(best))) best = found;
	}
	return best;
}
function headingsUnder(text, delimiter) {
	let found = null;
	eachRow(top(text), delimiter, (names, line) => {
		const meanings = names.map(meaningOf);
		const has = (...kinds) => meanings.some(({ kind }) => kinds.includes(kind));
		if (has("time") && has("channel", "meter")) found = {
			delimiter,
			line,
			names,
			meanings
		};
		return found === null;
	});
	return found;
}
const known$1 = ({ meanings }) => meanings.filter(({ kind }) => kind !== "other").length;
/** The lines in which headings may stand. */
function top(text) {
	let end = 0;
	for (let line = 0; line < limits$38.csvPreamble; line++) {
		const next = text.indexOf("\n", end);
		if (next === -1) return text;
		end = next + 1;
	}
	return text.slice(0, end);
}
/** The cells of the first line that has several, whatever they mean; none when no line has. */
function firstColumns(text) {
	for (const delimiter of delimiters) {
		let found = [];
		eachRow(top(text), delimiter, (cells) => {
			if (cells.length > 1) found = cells;
			return found.length === 0;
		});
		if (found.length > 0) return found;
	}
	return [];
}
// src/read/text.ts
const byteOrderMarks = [
	{
		encoding: "utf-8",
		bytes: [
			239,
			187,
			191
		]
	},
	{
		encoding: "utf-16le",
		bytes: [255, 254]
	},
	{
		encoding: "utf-16be",
		bytes: [254, 255]
	}
];
/**
* Text of a file: by its byte order mark, else as UTF-8, else (spreadsheets of the West) as Windows-1252.
* The mark itself is left out.
*/
function decodeText(bytes) {
	const marked = byteOrderMarks.find((mark) => mark.bytes.every((byte, i) => bytes[i] === byte));
	if (marked !== void 0) return new TextDecoder(marked.encoding).decode(bytes);
	try {
		return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {
		return new TextDecoder("windows-1252").decode(bytes);
	}
}
/** The beginning of a file as text; null when it is binary. */
function textHead(bytes, length) {
	const text = decodeText(bytes.subarray(0, length));
	return text.includes("\0") ? null : text.trimStart();
}
/** A name that a file gives to something: without padding, of bounded length; null when nothing is left. */
function shortName(value) {
	if (typeof value !== "string" && typeof value !== "number") return null;
	const name = String(value).replaceAll("\0", "").trim().slice(0, limits$38.nameLength);
	return name === "" ? null : name;
}
// src/read/sniff.ts
/** Bytes looked at to find the root element or the headings. */
const head$2 = 65536;
const prolog = /^(?:\s|<\?[^>]*>|<!--[\s\S]*?-->|<![^>]*>)*/;
const rootName = /^<(?:[\w.-]+:)?([\w.-]+)/;
/** What a file holds, told by its content alone: its name may say anything. */
function sniff(bytes) {
	if (bytes.length === 0) return "nothing";
	if (startsWith(bytes, [
		46,
		70,
		73,
		84
	], 8)) return "fit";
	if (startsWith(bytes, [
		31,
		139,
		8
	])) return "gzip";
	if (startsWith(bytes, [
		80,
		75,
		3,
		4
	]) || startsWith(bytes, [
		80,
		75,
		5,
		6
	])) return "zip";
	const text = textHead(bytes, head$2);
	if (text === null) return "other bytes";
	if (text.startsWith("<")) return sniffMarkup(text);
	if (text.startsWith("{") || text.startsWith("[")) return "other text";
	if (findHeadings(text) !== null) return "csv";
	return firstColumns(text).length > 0 ? "table" : "other text";
}
function sniffMarkup(text) {
	const root = rootName.exec(text.replace(prolog, ""))?.[1]?.toLowerCase();
	if (root === "trainingcenterdatabase") return "tcx";
	if (root === "gpx") return "gpx";
	return root === "html" ? "web page" : "other text";
}
function startsWith(bytes, signature, at = 0) {
	return signature.every((byte, i) => bytes[at + i] === byte);
}
// src/read/zip.ts
const endOfDirectory = {
	signature: 101010256,
	size: 22,
	longestComment: 65535
};
const directoryEntry = {
	signature: 33639248,
	size: 46
};
const memberHeader = {
	signature: 67324752,
	size: 30
};
const encrypted = 1;
const utf8Name = 2048;
const stored = 0;
const deflated = 8;
const inZip64 = 4294967295;
/**
* The files in a ZIP, in the order of its directory; folders are left out.
*
* @throws Problem `format-damaged` without a readable directory, `format-limits` with too many members.
*/
function members(bytes) {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const end = findEnd(view);
	const count = view.getUint16(end + 10, true);
	let at = view.getUint32(end + 16, true);
	if (count > limits$38.archiveMembers) throw new Problem({
		code: "format-limits",
		what: `this ZIP holds ${count} files; at most ${limits$38.archiveMembers} are looked at`,
		hint: "Split it into several"
	});
	const found = [];
	for (let i = 0; i < count; i++) {
		if (at + directoryEntry.size > bytes.length || view.getUint32(at, true) !== directoryEntry.signature) throw damaged();
		const nameLength = view.getUint16(at + 28, true);
		const member = readEntry(bytes, view, at, nameLength);
		if (!member.name.endsWith("/")) found.push(member);
		at += directoryEntry.size + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
	}
	return found;
}
/** The end record stands last, before a comment of any length. */
function findEnd(view) {
	const last = view.byteLength - endOfDirectory.size;
	for (let at = last; at >= Math.max(0, last - endOfDirectory.longestComment); at--) if (view.getUint32(at, true) === endOfDirectory.signature) return at;
	throw damaged();
}
function readEntry(bytes, view, at, nameLength) {
	const flags = view.getUint16(at + 8, true);
	const method = view.getUint16(at + 10, true);
	const checksum = view.getUint32(at + 16, true);
	const packedSize = view.getUint32(at + 20, true);
	const size = view.getUint32(at + 24, true);
	const header = view.getUint32(at + 42, true);
	const nameAt = at + directoryEntry.size;
	const name = new TextDecoder((flags & utf8Name) === 0 ? "windows-1252" : "utf-8").decode(bytes.subarray(nameAt, nameAt + nameLength));
	const unpack = async (budget) => {
		if ((flags & encrypted) !== 0) throw refused$2("is encrypted", "Pack it again without a password");
		if ([
			packedSize,
			size,
			header
		].includes(inZip64)) throw tooLarge$1("a file in this ZIP", budget.whole);
		if (method !== stored && method !== deflated) throw refused$2(`is packed by a method (${method}) that is not read`, "Pack it again as an ordinary ZIP");
		const from = dataStart(view, header);
		const packed = bytes.subarray(from, from + packedSize);
		if (method === stored) spend(budget, packed.length);
		const unpacked = method === stored ? packed : await inflate(packed, "deflate-raw", budget);
		if (unpacked.length !== size || crc32(unpacked) !== checksum) throw damaged();
		return unpacked;
	};
	return {
		name,
		size,
		unpack
	};
}
/** The member's own header repeats its name and may carry more: both are skipped. */
function dataStart(view, header) {
	if (header + memberHeader.size > view.byteLength || view.getUint32(header, true) !== memberHeader.signature) throw damaged();
	return header + memberHeader.size + view.getUint16(header + 26, true) + view.getUint16(header + 28, true);
}
function damaged() {
	return new Problem({
		code: "format-damaged",
		what: "this ZIP is incomplete or damaged",
		hint: "Download or pack it again"
	});
}
function refused$2(what, hint) {
	return new Problem({
		code: "format-unknown",
		what: `the file in this ZIP ${what}`,
		hint
	});
}
const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
	let crc = byte;
	for (let bit = 0; bit < 8; bit++) crc = (crc & 1) === 0 ? crc >>> 1 : crc >>> 1 ^ 3988292384;
	return crc;
});
/** CRC-32 as RFC 1952 and APPNOTE define it (reflected polynomial EDB88320). */
function crc32(bytes) {
	let crc = 4294967295;
	for (let i = 0; i < bytes.length; i++) crc = crc >>> 8 ^ crcTable[(crc ^ bytes[i]) & 255];
	return (crc ^ 4294967295) >>> 0;
}
// src/read/unpack.ts
/**
* Takes a recording out of gzip, or out of a ZIP that holds exactly one.
*
* @throws Problem when the wrapping is damaged, encrypted or too large, or a ZIP holds no or several recordings.
*/
async function unpack(bytes) {
	if (bytes.length > limits$38.fileBytes) throw tooLarge$1("this file", limits$38.fileBytes);
	return unwrap(bytes, limits$38.wrappers, budgetOf(limits$38.fileBytes));
}
async function unwrap(bytes, wrappers, budget) {
	const content = sniff(bytes);
	if (content !== "gzip" && content !== "zip") return {
		bytes,
		content
	};
	if (wrappers === 0) throw new Problem({
		code: "format-limits",
		what: "the file is packed over and over again",
		hint: "Unpack it and hand in the recording itself"
	});
	if (content === "zip") return onlyRecording(bytes, wrappers - 1, budget);
	return unwrap(await inflate(bytes, "gzip", budget), wrappers - 1, budget);
}
async function onlyRecording(zip, wrappers, budget) {
	let found = null;
	for await (const [, member] of recordingsIn(zip, wrappers, budget)) {
		if (member instanceof Problem) throw member;
		if (found !== null) throw new Problem({
			code: "format-unknown",
			what: "this ZIP holds several recordings",
			hint: "Unpack it and hand in the one that is meant"
		});
		found = member;
	}
	if (found !== null) return found;
	throw new Problem({
		code: "format-unknown",
		what: "this ZIP holds no recording",
		hint: "Hand in the original file from the head unit or the training app"
	});
}
/**
* Every recording in a ZIP of past rides, in the order of its directory, named "archive/member"; other
* files in it are passed over. A member that cannot be read comes as the Problem that says why, so that
* one damaged ride does not cost the others.
*
* @throws Problem when it is no ZIP, or the ZIP as a whole cannot be read or is too large.
*/
async function* openArchive(archive) {
	const { bytes } = archive;
	try {
		if (bytes.length > limits$38.archiveBytes) throw tooLarge$1("this ZIP", limits$38.archiveBytes);
		const budget = budgetOf(limits$38.archiveUnpackedBytes);
		for await (const [name, found] of recordingsIn(bytes, limits$38.wrappers - 1, budget)) {
			const place = `${archive.name}/${name}`;
			yield found instanceof Problem ? found.at(place) : {
				name: place,
				bytes: found.bytes
			};
		}
	} catch (error) {
		throw error instanceof Problem ? error.at(archive.name) : error;
	}
}
/** Whether `openArchive` is the way to open these bytes. */
function isArchive(bytes) {
	return sniff(bytes) === "zip";
}
const recordings = [
	"fit",
	"tcx",
	"gpx",
	"csv"
];
/** Every recording among the members, or why a member could not be unpacked; the others are passed over. */
async function* recordingsIn(zip, wrappers, budget) {
	for (const member of members(zip)) {
		if (member.size > limits$38.fileBytes) continue;
		if (budget.left <= 0) throw tooLarge$1("what is packed in this ZIP", budget.whole);
		const share = budgetOf(Math.min(budget.left, limits$38.fileBytes));
		const found = await tryUnpack(member, wrappers, share);
		budget.left -= share.whole - share.left;
		if (found instanceof Problem || recordings.includes(found.content)) yield [member.name, found];
	}
}
async function tryUnpack(member, wrappers, budget) {
	try {
		return await unwrap(await member.unpack(budget), wrappers, budget);
	} catch (error) {
		if (error instanceof Problem) return error;
		throw error;
	}
}
// src/read/index.ts
/**
* Every format that is read; `sniff` tells them apart by content. Each is loaded when the first file of its
* kind comes: a decoder takes 10 to 30 ms to load, and most runs need one.
*/
const formats = {
	fit: async () => (await import("./fit.js")).readFit,
	tcx: async () => (await import("./tcx.js")).readTcx,
	gpx: async () => (await import("./gpx.js")).readGpx,
	csv: async () => (await import("./csv.js")).readCsv
};
/**
* Reads one device's file, as it stands: FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP, told apart by
* content and never by name. Nothing is repaired or resampled. Positions are dropped here. A recording
* without power, or of another sport, is returned like any other.
*
* @throws Problem, placed at the file's name: `format-unknown`, `format-damaged`, `format-limits`, `no-records`.
*/
async function read(file) {
	try {
		const digest = sha256(file.bytes);
		const { format, parsed } = await parse(await unpack(file.bytes));
		if (parsed.time.length === 0) throw noRecords();
		return {
			name: file.name,
			sha256: await digest,
			format,
			...parsed
		};
	} catch (error) {
		throw error instanceof Problem ? error.at(file.name) : error;
	}
}
async function parse({ bytes, content }) {
	const format = content === "table" ? "csv" : content;
	if (!isFormat(format)) throw unknown(format);
	return {
		format,
		parsed: (await formats[format]())(bytes)
	};
}
function isFormat(content) {
	return Object.hasOwn(formats, content);
}
const seen = {
	nothing: "this file is empty",
	"web page": "this is a web page, not a recording: the download may have asked for a login",
	"other text": "this text is not a recording that can be read (TCX, GPX or CSV)",
	"other bytes": "this is not a recording that can be read (FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP)"
};
function unknown(content) {
	return new Problem({
		code: "format-unknown",
		what: seen[content],
		hint: "Hand in the original file from the head unit or the training app"
	});
}
function noRecords() {
	return new Problem({
		code: "no-records",
		what: "this file holds no record with a time: it may be a planned route, a workout or settings",
		hint: "Hand in the recording of the ride itself"
	});
}
// src/sections/settings.ts
/** What makes a section, each with its reason. Common practice, no source, unless said otherwise. */
const settings$1 = {
	/** Sprint: three-second power this many times the mean of the ride … */
	sprintPeak: 2,
	/** … out to where it falls under this many times the mean, */
	sprintEdge: 1.4,
	/** and between so many seconds long: shorter is a stroke, longer is an attack. */
	sprintShortest: 4,
	sprintLongest: 40,
	/** Coasting: no power on any meter for so long (s). Shorter ones are corners. */
	coastingShortest: 10,
	/** Climb: at least so much rise over run … */
	climbGrade: .03,
	/** … for so long (s), measured over windows of so many seconds (barometers wander). */
	climbShortest: 180,
	climbWindow: 60,
	/** Set-point block: ten-second means within this share of their level for so long (s). An honest
	* controlled session varies by 2 to 4 %. */
	setPointShare: .05,
	setPointShortest: 60,
	/** Steady: half-minute means within this share of their level for so long (s). */
	steadyShare: .08,
	steadyShortest: 180,
	/** Over-under: at least so many levels in turn above and below, each so long (s), and so far apart. */
	overUnderLevels: 4,
	overUnderLongest: 180,
	overUnderStep: .06
};
// src/sections/climbs.ts
/** Stretches that go up for minutes, by altitude over distance (or speed) in windows. */
function climbs({ channels, length }, [from, to]) {
	const { altitude, distance, speed } = channels;
	if (altitude === void 0 || distance === void 0 && speed === void 0) return [];
	const half = settings$1.climbWindow / 2;
	const travelled = (a, b) => distance === void 0 ? (speed[a] + speed[b]) / 2 * (b - a) : distance[b] - distance[a];
	const goesUp = (t) => {
		const a = Math.max(0, t - half);
		const b = Math.min(length - 1, t + half);
		return altitude[b] - altitude[a] >= settings$1.climbGrade * travelled(a, b) && travelled(a, b) > 0;
	};
	return stretchesWhere(from, to, goesUp, settings$1.climbShortest, half);
}
// src/sections/levels.ts
/**
* The longest stretches in which means over `grain` seconds stay within a share of their running level,
* found greedily from the start; a mean with a gap, or without power, ends a level.
*/
function levelStretches(power, [from, to], { grain, share, shortest }) {
	const found = [];
	let start = from;
	let sum = 0;
	let count = 0;
	const close = (end) => {
		if (count > 0 && end - start >= shortest) found.push({
			stretch: [start, end],
			watts: sum / count
		});
		start = end;
		sum = 0;
		count = 0;
	};
	for (let t = from; t + grain <= to; t += grain) {
		const mean = meanOf$1(power, t, t + grain);
		if (!(mean > 0 && (count === 0 || Math.abs(mean / (sum / count) - 1) <= share))) close(t);
		if (!(mean > 0)) {
			start = t + grain;
			continue;
		}
		sum += mean;
		count++;
	}
	close(from + Math.floor((to - from) / grain) * grain);
	return found;
}
/** Mean of a stretch; NaN when any second is missing. */
function meanOf$1(power, from, to) {
	let sum = 0;
	for (let t = from; t < to; t++) sum += power[t];
	return sum / (to - from);
}
// src/sections/over-unders.ts
/** Stretches in which power goes up and down between levels in turn, as in over-under intervals. */
function overUnders(power, window) {
	const levels = levelStretches(power, window, {
		grain: 10,
		share: settings$1.setPointShare,
		shortest: 20
	}).filter(({ stretch }) => stretch[1] - stretch[0] <= settings$1.overUnderLongest);
	const found = [];
	let from = 0;
	for (let i = 1; i <= levels.length; i++) {
		if (i < levels.length && continues(levels, from, i)) continue;
		if (i - from >= settings$1.overUnderLevels) found.push([levels[from].stretch[0], levels[i - 1].stretch[1]]);
		from = i;
	}
	return found;
}
/** The level follows within seconds, is far enough away, and turns the other way than the last change. */
function continues(levels, from, i) {
	const last = levels[i - 1];
	const next = levels[i];
	if (next.stretch[0] - last.stretch[1] > 20) return false;
	const change = next.watts / last.watts - 1;
	if (Math.abs(change) < settings$1.overUnderStep) return false;
	return i - 1 === from || change > 0 !== last.watts > levels[i - 2].watts;
}
// src/sections/sprints.ts
/** Short hard efforts, from edge to edge; a gap inside leaves one out. */
function sprints(power, [from, to]) {
	const mean = meanPedalling(power, from, to);
	const peak = settings$1.sprintPeak * mean;
	const edge = settings$1.sprintEdge * mean;
	const found = [];
	for (let t = from + 1; t + 1 < to; t++) {
		if (!((power[t - 1] + power[t] + power[t + 1]) / 3 >= peak)) continue;
		let start = t;
		while (start > from && power[start - 1] >= edge) start--;
		let end = t + 1;
		while (end < to && power[end] >= edge) end++;
		const seconds = end - start;
		if (seconds >= settings$1.sprintShortest && seconds <= settings$1.sprintLongest) found.push([start, end]);
		t = end;
	}
	return found;
}
function meanPedalling(power, from, to) {
	let sum = 0;
	let count = 0;
	for (let t = from; t < to; t++) {
		if (!(power[t] > 0)) continue;
		sum += power[t];
		count++;
	}
	return sum / count;
}
// src/sections/index.ts
/**
* Finds the stretches of the race that are worth comparing on their own, in order of kind and time. Power
* is the mean of all meters on one clock: finding sprints by one of them would pick its errors.
*/
function findSections(set, window) {
	const power = meanPower(set);
	const of = (kind, stretches) => stretches.map((stretch) => ({
		kind,
		stretch
	}));
	const [from, to] = window;
	const third = Math.floor((to - from) / 3);
	const thirds = [...of("first third", [[from, from + third]]), ...of("last third", [[to - third, to]])];
	if (power === null) return thirds;
	const steady = levelStretches(power, window, {
		grain: 30,
		share: settings$1.steadyShare,
		shortest: settings$1.steadyShortest
	});
	const held = levelStretches(power, window, {
		grain: 10,
		share: settings$1.setPointShare,
		shortest: settings$1.setPointShortest
	});
	const still = stretchesWhere(from, to, (t) => power[t] === 0, settings$1.coastingShortest);
	return [
		...thirds,
		...of("steady", steady.map(({ stretch }) => stretch)),
		...of("set-point block", held.map(({ stretch }) => stretch)),
		...of("over-under", overUnders(power, window)),
		...of("climb", climbs(set.primary, window)),
		...of("sprint", sprints(power, window)),
		...of("coasting", still)
	];
}
/** Mean of the meters on one clock, W; NaN where one of them has a gap. Null without power. */
function meanPower({ primary, seconds }) {
	const own = primary.channels.power;
	if (own === void 0) return null;
	const others = seconds.filter(({ alignment }) => alignment.secure).flatMap(({ series }) => series.channels.power ?? []);
	if (others.length === 0) return own;
	return own.map((watts, t) => others.reduce((sum, other) => sum + other[t], watts) / (others.length + 1));
}
// src/sections/window.ts
/**
* The race on the primary's series: from the race facts where they give start or finish, cut to what was
* recorded; otherwise from the first to the last second with power. A window that does not touch the
* recording at all is kept as the whole recording, marked as proposed: whether the ride was on the right
* day is for a rule to say, and the rest can still be looked at.
*/
function raceWindow(primary, race) {
	const proposed = ridden(primary);
	if (race.start === void 0 && race.finish === void 0) return {
		stretch: proposed,
		given: false
	};
	const from = race.start === void 0 ? proposed[0] : Math.floor(Date.parse(race.start) / 1e3) - primary.start;
	const to = race.finish === void 0 ? proposed[1] : Math.ceil(Date.parse(race.finish) / 1e3) - primary.start;
	const stretch = [Math.max(0, from), Math.min(primary.length, to)];
	return stretch[1] > stretch[0] ? {
		stretch,
		given: true
	} : {
		stretch: proposed,
		given: false
	};
}
function ridden({ channels: { power }, length }) {
	if (power === void 0) return [0, length];
	const from = power.findIndex((watts) => watts > 0);
	return from < 0 ? [0, length] : [from, power.findLastIndex((watts) => watts > 0) + 1];
}
// src/audit.ts
/**
* THE function: read → normalise → align → find sections → measure → judge. Start reading here.
*/
/**
* Audits one submission.
*
* @param onStage told before each stage begins
* @throws Problem when the primary cannot be read; a second that cannot be read is stated in the report
*/
async function audit(submission, rules, onStage = () => {}) {
	onStage("reading");
	const primary = await read(submission.primary);
	if (primary.channels.power === void 0 && primary.extraMeters.length === 0) throw new Problem({
		code: "no-power",
		what: "this recording holds no power, so there is nothing to audit",
		where: submission.primary.name,
		hint: "Hand in the recording of a ride with a power meter or trainer, in its original format"
	});
	const { seconds, unreadable: unread } = await readSeconds(submission.seconds);
	const unreadable = [...submission.unopened ?? [], ...unread];
	return auditRecordings({
		...submission,
		primary,
		seconds,
		unreadable
	}, rules, onStage);
}
/** Audits recordings that are read already. */
function auditRecordings(submission, rules, onStage = () => {}) {
	const { race, profile, unreadable } = submission;
	const rider = unreadable.length === 0 ? submission.rider : withoutPlaces(submission.rider);
	const { series: primary, steps } = normalise(submission.primary, "primary");
	const seconds = submission.seconds.map((second) => normalise(second, `second:${short(second)}`));
	onStage("aligning");
	const { stretch: window, given: windowGiven } = raceWindow(primary, race);
	const own = short(submission.primary);
	const aligned = [...seconds.map(({ series }) => align(primary, series, `pair:${short(series.recording)}`, window)), ...primary.extraMeters.map((meter, i) => alignExtra(primary, meter, `pair:${own}.${i + 1}`, window))];
	onStage("measuring");
	const history = profile === null ? null : historyFor(profile, primary.start, primary.start + primary.length);
	const all = {
		primary,
		seconds: aligned,
		sections: findSections({
			primary,
			seconds: aligned
		}, window),
		window,
		rider,
		race,
		history
	};
	const measured = measureAll(all, rules.rules);
	onStage("judging");
	const { measurements, findings } = judge(measured, rules);
	const missing = missingOf(race.required ?? [], {
		channels: channels.filter((channel) => primary.channels[channel] !== void 0),
		independentSeconds: aligned.filter(({ alignment }) => alignment.origin !== "same sensor").length,
		rides: history?.rides.length ?? 0
	});
	return assemble$1({
		all,
		rules,
		otherInputs: submission.otherInputs,
		windowGiven,
		sections: sectionTable(all),
		steps: [
			...steps,
			...seconds.flatMap((second) => second.steps),
			...aligned.map(alignedStep),
			windowStep(window, windowGiven)
		],
		unreadable,
		measurements,
		findings,
		missing,
		grade: gradeOf$1(findings, rules, {
			missing,
			unreadable: unreadable.length
		}),
		reach: reachOf(measurements)
	});
}
/** Reads every second; one that cannot be read is kept with the sentence that says why. */
async function readSeconds(files) {
	const seconds = [];
	const unreadable = [];
	for (const file of files) try {
		seconds.push(await read(file));
	} catch (error) {
		if (!(error instanceof Problem)) throw error;
		unreadable.push({
			name: file.name,
			why: sentence$1(error)
		});
	}
	return {
		seconds,
		unreadable
	};
}
const short = ({ sha256 }) => sha256.slice(0, 8);
function alignedStep({ subject, alignment }) {
	const { offset, segments } = alignment;
	return {
		subject,
		id: "aligned",
		values: {
			offset: offset === null ? "" : {
				value: offset.value,
				unit: "s"
			},
			segments: {
				value: segments.length,
				unit: "count"
			}
		}
	};
}
function windowStep([from, to], given) {
	return {
		subject: "submission",
		id: given ? "window-given" : "window-proposed",
		values: {
			from: {
				value: from,
				unit: "s"
			},
			to: {
				value: to,
				unit: "s"
			}
		}
	};
}
// src/files/trouble.ts
const troubles = {
	ENOENT: {
		code: "missing",
		what: "there is no such file or folder"
	},
	ENOTDIR: {
		code: "missing",
		what: "a part of the path is no folder"
	},
	EACCES: {
		code: "other",
		what: "permission is denied",
		hint: "Look at the rights of the file and its folder"
	},
	EPERM: {
		code: "other",
		what: "the system does not permit it",
		hint: "Look at the rights, and whether another program has the file open"
	},
	EBUSY: {
		code: "other",
		what: "another program is using it",
		hint: "Close the file there first"
	},
	ELOOP: {
		code: "other",
		what: "it is a link",
		hint: "Hand in the file itself"
	},
	EISDIR: {
		code: "other",
		what: "it is a folder, and a file is wanted"
	},
	ENAMETOOLONG: {
		code: "other",
		what: "its name is too long"
	},
	ENOSPC: {
		code: "other",
		what: "the disk is full",
		hint: "Make room, or write to another disk"
	},
	EDQUOT: {
		code: "other",
		what: "your share of the disk is full",
		hint: "Make room, or write elsewhere"
	},
	EROFS: {
		code: "other",
		what: "the disk can only be read",
		hint: "Write to another place"
	},
	EEXIST: {
		code: "other",
		what: "it is there already"
	},
	ENOTEMPTY: {
		code: "other",
		what: "it is a folder, and a file is wanted"
	},
	ENXIO: {
		code: "other",
		what: "it is no ordinary file"
	},
	EMFILE: {
		code: "other",
		what: "too many files are open"
	},
	EIO: {
		code: "other",
		what: "the disk reports a fault"
	},
	EINVAL: {
		code: "other",
		what: "the system does not accept the name"
	},
	ERR_INVALID_ARG_VALUE: {
		code: "other",
		what: "the name holds a character that no file name can hold"
	}
};
/** The words for an error of the file system; null when it is none, and so a fault of the program. */
function whyNot(error) {
	const code = error?.code;
	return typeof code === "string" && Object.hasOwn(troubles, code) ? troubles[code] : null;
}
// src/files/inside.ts
/**
* Refuses a path that leads out of a folder, by itself or by a link anywhere on its way below the folder.
* What does not exist yet passes: it can be made there.
*
* @throws Problem `file-refused`
*/
async function refuseOutside(root, file) {
	const way = path.relative(root, path.resolve(root, file));
	const parts = way.split(path.sep);
	if (path.isAbsolute(way) || parts[0] === "..") throw refused$1(file, "it lies outside the folder that may be used");
	let at = root;
	for (const part of parts) {
		at = path.join(at, part);
		try {
			if ((await lstat(at)).isSymbolicLink()) throw refused$1(file, "it is, or lies behind, a link");
		} catch (error) {
			if (whyNot(error)?.code === "missing") return;
			throw error;
		}
	}
}
function refused$1(where, what) {
	return new Problem({
		code: "file-refused",
		what,
		where
	});
}
// src/files/limits.ts
const KiB = 1024;
const MiB = 1024 * KiB;
/** How much is read from disk, and how far a folder is searched. */
const limits$37 = {
	/** Bytes of one recording, packed or not. */
	recordingBytes: 64 * MiB,
	/** Bytes of a ZIP that holds a rider's past rides. */
	archiveBytes: 512 * MiB,
	/** Bytes of a rule, rider, race or grades file. */
	factsBytes: 256 * KiB,
	/** Bytes of a compiled profile: ten thousand past rides. */
	profileBytes: 64 * MiB,
	/** Folders below the one named. */
	depth: 8,
	/** Entries seen in all folders together. */
	entries: 5e4
};
// src/math/nearest.ts
/**
* Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours.
* Strings are a stranger's and compared in full, so both are cut to `longest` characters first.
*/
function editDistance(a, b) {
	const longest = 64;
	const from = a.slice(0, longest);
	const to = b.slice(0, longest);
	let before = new Uint8Array(to.length + 1);
	let last = Uint8Array.from({ length: to.length + 1 }, (_, j) => j);
	for (let i = 1; i <= from.length; i++) {
		const row = new Uint8Array(to.length + 1);
		row[0] = i;
		for (let j = 1; j <= to.length; j++) {
			const differs = from[i - 1] === to[j - 1] ? 0 : 1;
			let least = Math.min(last[j] + 1, row[j - 1] + 1, last[j - 1] + differs);
			if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]) least = Math.min(least, before[j - 2] + 1);
			row[j] = least;
		}
		before = last;
		last = row;
	}
	return last[to.length];
}
/** The known word that a misspelt or shortened one most likely meant, or null when none is near. */
function nearest(word, known) {
	const plain = (text) => text.toLowerCase().replace(/[\s_-]/g, "");
	const meant = plain(word);
	let best = null;
	let least = Math.min(3, Math.floor((meant.length + 1) / 3)) + 1;
	for (const candidate of known) {
		const distance = meant.length >= 3 && plain(candidate).startsWith(meant) ? 1 : editDistance(meant, plain(candidate));
		if (distance < least) {
			best = candidate;
			least = distance;
		}
	}
	return best;
}
// src/files/similar.ts
/** Entries of a folder that are looked through for a name that was meant. */
const most = 2e3;
/** The name of a file in the same folder that is almost the one that is not there; null when none is. */
async function similarName(file) {
	const folder = path.dirname(file);
	const names = [];
	try {
		for await (const entry of await opendir(folder)) {
			names.push(entry.name);
			if (names.length >= most) break;
		}
	} catch {
		return null;
	}
	return nearest(path.basename(file), names.sort());
}
// src/files/read.ts
/** Not to follow a link and not to wait for a pipe, where the system knows how: Windows has neither. */
const flags = constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0);
/**
* Reads one regular file, at most so many bytes of it.
*
* @throws Problem `file-missing`, or `file-refused` for a folder, a link, a device, a pipe, a file that
*   lies outside, is too large or may not be read
*/
async function readFileSafely(file, { most, root, shown = file }) {
	const name = path.basename(file);
	try {
		const real = root === void 0 ? await realpath(file) : await placeInside(file, root, shown);
		refuseIrregular(await lstat(real), shown);
		const handle = await open(real, flags);
		try {
			refuseIrregular(await handle.stat(), shown);
			return {
				name,
				bytes: await readAtMost(handle, most, shown)
			};
		} finally {
			await handle.close();
		}
	} catch (error) {
		throw await asProblem$2(error, file, shown);
	}
}
/** The file's place with every link before it resolved; the file itself is not, a link would be refused. */
async function placeInside(file, root, shown) {
	const realRoot = await realpath(root);
	const from = path.resolve(root, file);
	const real = path.join(await realpath(path.dirname(from)), path.basename(from));
	const way = path.relative(realRoot, real);
	if (way === "" || way === ".." || way.startsWith(`..${path.sep}`) || path.isAbsolute(way)) throw refused(shown, "it lies outside the folder that may be read");
	return real;
}
function refuseIrregular(stats, file) {
	if (stats.isSymbolicLink()) throw refused(file, "it is a link", "Hand in the file itself");
	if (stats.isDirectory()) throw refused(file, "it is a folder, and a file is wanted");
	if (!stats.isFile()) throw refused(file, "it is no ordinary file");
}
/** Reads to the end, one byte past the cap at most: what the file claims about its size is not trusted. */
async function readAtMost(handle, most, file) {
	const { size } = await handle.stat();
	if (size > most) throw tooLarge(file, most);
	let buffer = new Uint8Array(Math.min(size, most) + 1);
	let filled = 0;
	for (;;) {
		const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled);
		if (bytesRead === 0) return buffer.subarray(0, filled);
		filled += bytesRead;
		if (filled > most) throw tooLarge(file, most);
		if (filled === buffer.length) {
			const larger = new Uint8Array(Math.min(buffer.length * 2, most + 1));
			larger.set(buffer);
			buffer = larger;
		}
	}
}
function tooLarge(file, most) {
	return refused(file, `it is larger than ${Math.round(most / 1024).toLocaleString("en")} kB`);
}
function refused(file, what, hint) {
	return new Problem({
		code: "file-refused",
		what,
		where: file,
		...hint === void 0 ? {} : { hint }
	});
}
async function asProblem$2(error, file, shown) {
	if (error instanceof Problem) return error;
	const why = whyNot(error);
	if (why === null) return error;
	if (why.code !== "missing") return refused(shown, why.what, why.hint);
	const similar = await similarName(file);
	return new Problem({
		code: "file-missing",
		what: "there is no such file",
		where: shown,
		...similar === null ? {} : { hint: `Did you mean ${similar}?` }
	});
}
// src/files/walk.ts
/**
* Every ordinary file below a folder, in order of name, folder by folder. Links are never followed and
* hidden entries (a leading dot) are passed over.
*
* @throws Problem `file-missing` or `file-refused`, also when there is more than the bounds allow
*/
async function filesBelow(folder, bounds = limits$37) {
	const found = [];
	const budget = { entries: bounds.entries };
	await descend(folder, "", bounds.depth, budget, found);
	return found;
}
/** The ordinary files of one folder, in order of name; what lies deeper is not looked at. */
async function filesIn(folder, bounds = limits$37) {
	const found = [];
	for (const entry of await entriesOf(folder, { entries: bounds.entries })) {
		const place = path.join(folder, entry.name);
		if (await kindOf(entry, place) === "file") found.push({
			path: place,
			name: entry.name
		});
	}
	return found;
}
async function descend(folder, prefix, depth, budget, found) {
	for (const entry of await entriesOf(folder, budget)) {
		const below = path.join(folder, entry.name);
		const name = prefix + entry.name;
		const kind = await kindOf(entry, below);
		if (kind === "file") found.push({
			path: below,
			name
		});
		else if (kind === "folder") {
			if (depth === 0) throw tooMuch(below, "the folders lie too deep in one another");
			await descend(below, `${name}/`, depth - 1, budget, found);
		}
	}
}
/** Sorted by code unit, so that every system sees the same order. */
async function entriesOf(folder, budget) {
	const entries = [];
	try {
		for await (const entry of await opendir(folder)) {
			if (entry.name.startsWith(".")) continue;
			if (budget.entries-- <= 0) throw tooMuch(folder, "there are too many files below this folder");
			entries.push(entry);
		}
	} catch (error) {
		throw asProblem$1(error, folder);
	}
	return entries.sort((a, b) => a.name < b.name ? -1 : 1);
}
/** Some file systems do not say in a listing what an entry is; then the entry itself is asked. */
async function kindOf(entry, place) {
	const asked = entry.isFile() || entry.isDirectory() || entry.isSymbolicLink() ? entry : await lstat(place);
	if (asked.isFile()) return "file";
	return asked.isDirectory() ? "folder" : "other";
}
function tooMuch(where, what) {
	return new Problem({
		code: "file-refused",
		what,
		where,
		hint: "Name a smaller folder"
	});
}
function asProblem$1(error, folder) {
	if (error instanceof Problem) return error;
	const why = whyNot(error);
	if (why === null) return error;
	const missing = why.code === "missing";
	return new Problem({
		code: missing ? "file-missing" : "file-refused",
		what: missing ? "there is no such folder" : why.what,
		where: folder,
		...why.hint === void 0 ? {} : { hint: why.hint }
	});
}
// src/files/write.ts
/**
* Writes a whole file or nothing: into a new file beside it first, which then takes its name. A file
* that is there is replaced.
*
* @throws Problem `file-unwritable`
*/
async function writeWhole(file, content) {
	const beside = path.join(path.dirname(file), `.${path.basename(file).slice(0, 60)}.${randomBytes(6).toString("hex")}.part`);
	let begun = false;
	try {
		await refuseOther(file);
		const handle = await open(beside, "wx");
		begun = true;
		try {
			await handle.writeFile(content);
		} finally {
			await handle.close();
		}
		await rename(beside, file);
	} catch (error) {
		if (begun) await unlink(beside).catch(() => {});
		throw asProblem(error, file);
	}
}
/** A name that is taken by a folder or a device must not be replaced by a file. */
async function refuseOther(file) {
	let stats;
	try {
		stats = await lstat(file);
	} catch (error) {
		if (whyNot(error)?.code === "missing") return;
		throw error;
	}
	if (stats.isFile() || stats.isSymbolicLink()) return;
	throw unwritable(file, stats.isDirectory() ? "there is a folder of this name" : "it is no ordinary file");
}
function unwritable(file, what, hint) {
	return new Problem({
		code: "file-unwritable",
		what,
		where: file,
		...hint === void 0 ? {} : { hint }
	});
}
function asProblem(error, file) {
	if (error instanceof Problem) return error;
	const why = whyNot(error);
	if (why === null) return error;
	return why.code === "missing" ? unwritable(file, "its folder is not there", `Make the folder ${path.dirname(file)} first`) : unwritable(file, `it cannot be written: ${why.what}`, why.hint);
}
// src/report/words/number.ts
/** Between a number and its unit: they stay on one line. */
const space = "\xA0";
const minus = "−";
/** Units whose trailing zeros carry meaning for a reader: a ratio of 1.000 was measured to three places. */
const keepsZeros = ["ratio", "r"];
function digits(value, places, keepZeros) {
	const fixed = Math.abs(value).toFixed(places);
	const [whole, fraction] = (keepZeros || !fixed.includes(".") ? fixed : fixed.replace(/\.?0+$/, "")).split(".");
	const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, ",") : whole;
	const text = fraction === void 0 ? grouped : `${grouped}.${fraction}`;
	return value < 0 && /[1-9]/.test(text) ? minus + text : text;
}
/** A bare number: at most three decimals. */
function number$2(value) {
	return digits(value, 3, false);
}
/** The number as it is printed beside its unit; a share becomes a percentage. */
function figure$1(value, unit) {
	return unit === "share" ? digits(value * 100, decimals.share - 2, false) : digits(value, decimals[unit], keepsZeros.includes(unit));
}
/** What is printed behind the number; empty for counts, ratios and correlations. */
function unitMark(unit) {
	if (unit === "share") return "%";
	return unit === "count" || unit === "ratio" || unit === "r" ? "" : unit;
}
/** Long times are said in hours, minutes and seconds. */
function isLong(value, unit) {
	return unit === "s" && Number.isInteger(value) && Math.abs(value) >= 120;
}
/** A value with its unit. */
function quantity(value, unit) {
	if (isLong(value, unit)) return duration(value);
	const mark = unitMark(unit);
	return mark === "" ? figure$1(value, unit) : figure$1(value, unit) + space + mark;
}
/** "3.1 to 5.3 %", or null for an exact count, whose interval is itself. */
function range([low, high], unit) {
	if (low === high) return null;
	return `${isLong(low, unit) || isLong(high, unit) ? quantity(low, unit) : figure$1(low, unit)} to ${quantity(high, unit)}`;
}
/** "at least 8 %", "at most −3 %", or both; null when it sets no number. */
function limit(limit, unit) {
	const sides = [];
	if (limit.atMost !== null) sides.push(`at most ${quantity(limit.atMost, unit)}`);
	if (limit.atLeast !== null) sides.push(`at least ${quantity(limit.atLeast, unit)}`);
	return sides.length === 0 ? null : sides.join(" or ");
}
/** "1 h 2 min 3 s"; parts that are nought are left out. */
function duration(seconds) {
	const whole = Math.round(Math.abs(seconds));
	const said = [
		[Math.floor(whole / 3600), "h"],
		[Math.floor(whole / 60) % 60, "min"],
		[whole % 60, "s"]
	].filter(([count]) => count > 0).map(([count, unit]) => `${count}${space}${unit}`);
	return (seconds < 0 && said.length > 0 ? minus : "") + (said.length > 0 ? said.join(" ") : `0${space}s`);
}
/** A place in the ride, from its start: "12:34", "1:02:34". */
function position(seconds) {
	const whole = Math.abs(Math.round(seconds));
	const two = (part) => String(part).padStart(2, "0");
	const hours = Math.floor(whole / 3600);
	const minutes = Math.floor(whole / 60) % 60;
	const clock = hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
	return seconds < 0 ? minus + clock : clock;
}
/** "12:34–12:50". */
function span([from, to]) {
	return `${position(from)}–${position(to)}`;
}
/** The first stretches, and how many there are besides. */
function spans(stretches, most) {
	const more = stretches.length - most;
	return stretches.slice(0, most).map(span).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
/** Seconds that JavaScript's Date can hold. */
const lastSecond = 864e10;
/** "2026-03-14 19:02:11 UTC". */
function clock(seconds) {
	if (!(Math.abs(seconds) <= lastSecond)) return "at an impossible time";
	return `${(/* @__PURE__ */ new Date(Math.round(seconds) * 1e3)).toISOString().slice(0, 19).replace("T", " ")} UTC`;
}
/** A share of honest submissions: "1 in 2000", "fewer than 1 in 100,000". */
function oneIn(share) {
	if (share <= 0) return "none that was tried";
	if (share >= .1) return quantity(share, "share");
	if (share < 1e-5) return "fewer than 1 in 100,000";
	const odds = 1 / share;
	const scale = 10 ** Math.max(0, Math.floor(Math.log10(odds)) - 1);
	return `1 in ${number$2(Math.round(odds / scale) * scale)}`;
}
/** "1 finding", "2 findings". */
function counted(count, one, many = `${one}s`) {
	return `${number$2(count)}${space}${count === 1 ? one : many}`;
}
// src/report/clean.ts
/**
* Text that came from a file, made safe to show. Control characters (a newline among them), line and
* paragraph separators, direction overrides, lone surrogates and whatever XML forbids become U+FFFD, so
* that nothing can move a cursor, start a line, reverse a sentence or break a document.
*/
const unshowable = /[\p{Cc}\p{Cs}\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb\ufffe\uffff\u{e0000}-\u{e007f}]/gu;
/** The characters alone: for media that escape for themselves. */
function showable(text) {
	return text.replace(unshowable, "�");
}
/**
* For a terminal or a log. Continuous-integration logs take `::name::` and `##[name]` as commands, also
* behind spaces: a space inside takes that power away and leaves them readable.
*/
function clean(text) {
	return showable(text).replaceAll("##[", "## [").replace(/:(?=:)/g, ": ");
}
/** At most `most` characters, counted as a reader counts them, the cut marked. */
function shorten$1(text, most) {
	const characters = [...text.slice(0, most * 4)];
	return characters.length <= most && text.length <= most * 4 ? text : `${characters.slice(0, most - 1).join("")}…`;
}
// src/report/markup.ts
const made = /* @__PURE__ */ new WeakSet();
function brand(text) {
	const markup = { toString: () => text };
	made.add(markup);
	return markup;
}
function escaped(text) {
	return showable(text).replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}
/** Attributes whose value is code, markup, style or an address: closed to holes ("#" + hole excepted). */
const closed = /^(on.*|style|srcdoc|src|srcset|action|formaction|data|poster|ping|background|cite|xmlns.*)$/i;
const address = /^(href|xlink:href)$/i;
/** Elements whose content is not text. */
const raw = /^(script|style|iframe|noscript|xmp|noembed|noframes|plaintext)$/i;
/** Walks the fixed parts of a template once and says in which context each hole stands; throws if in none. */
function contexts(parts) {
	const found = [];
	let state = "text";
	let attribute = "";
	let quote = "";
	let value = "";
	let rawElement = "";
	for (const [index, part] of parts.entries()) {
		let at = 0;
		while (at < part.length) {
			const rest = part.slice(at);
			if (state === "text") {
				const tag = /^<(\/?)([a-zA-Z][\w:-]*)/.exec(rest);
				if (rest[0] === "<" && tag === null) throw new Error(`neither tag nor text: ${rest.slice(0, 20)}`);
				if (tag !== null) {
					rawElement = tag[1] === "/" ? "" : raw.test(tag[2]) ? tag[2] : rawElement;
					state = "tag";
					at += tag[0].length;
				} else at++;
			} else if (state === "tag") {
				const name = /^[\w:.-]+(?==)/.exec(rest);
				if (rest[0] === ">") state = "text";
				if (name !== null) {
					attribute = name[0];
					state = "name";
					at += name[0].length + 1;
				} else at++;
			} else if (state === "name") {
				if (rest[0] !== "\"" && rest[0] !== "'") throw new Error(`attribute ${attribute} is not quoted`);
				quote = rest[0];
				value = "";
				state = "value";
				at++;
			} else {
				if (rest[0] === quote) state = "tag";
				else value += rest[0];
				at++;
			}
		}
		if (index === parts.length - 1) break;
		if (state === "text" && rawElement === "") found.push("text");
		else if (state === "value" && !closed.test(attribute) && (!address.test(attribute) || value.startsWith("#"))) found.push("attribute");
		else throw new Error(`no value may stand after …${part.slice(-40)}`);
	}
	if (state !== "text") throw new Error(`a template ends inside a tag: …${parts.at(-1).slice(-40)}`);
	return found;
}
const known = /* @__PURE__ */ new WeakMap();
function contextsOf(parts) {
	let found = known.get(parts);
	if (found === void 0) {
		found = contexts(parts);
		known.set(parts, found);
	}
	return found;
}
function put(hole, context) {
	if (hole === null || hole === void 0 || hole === false) return "";
	if (typeof hole === "string") return escaped(hole);
	if (typeof hole === "number") {
		if (!Number.isFinite(hole)) throw new Error(`not a number to print: ${hole}`);
		return String(hole);
	}
	if (context === "text") {
		if (Array.isArray(hole)) return hole.map((one) => put(one, context)).join("");
		if (made.has(hole)) return hole.toString();
	}
	throw new Error(`neither text nor markup in ${context}: ${typeof hole}`);
}
/**
* Markup from a template: every hole is escaped, and may stand only in text or in a quoted attribute that
* is not code, style or address. A hole anywhere else is a fault of the program and throws at once.
*/
function html(parts, ...holes) {
	const where = contextsOf(parts);
	let out = parts[0];
	for (const [index, hole] of holes.entries()) out += put(hole, where[index]) + parts[index + 1];
	return brand(out);
}
/** The same tag under the name that fits drawings. */
const svg = html;
/** Data for the page's own script: nothing in it can end the element or start markup. */
function jsonBlock(id, data) {
	const text = JSON.stringify(data).replace(/[<>&\u2028\u2029]/g, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`);
	return brand(`<script type="application/json" id="${escaped(id)}">${text}<\/script>`);
}
// src/report/chart/palette.ts
/**
* The colours of all drawings, in pairs: on light paper and on a dark screen. A drawing carries the light
* ones as attributes, so that a saved file is right wherever it is opened and print is always light, and
* classes by which the page's dark style replaces them. Series colours differ in lightness as well as in
* hue, so that colour-blind readers tell them apart.
*/
const palette = {
	ink: ["#1d2126", "#ebe7de"],
	quiet: ["#575d66", "#a9a69e"],
	rule: ["#d9d5cb", "#3a3d42"],
	paper: ["#fffdf8", "#16181b"],
	a: ["#0b5394", "#7db8f2"],
	b: ["#c4550d", "#f5a05f"],
	c: ["#00785a", "#59c9a5"],
	d: ["#8e3b76", "#dd95c8"],
	haze: ["#c3bba8", "#5b5f66"],
	band: ["#e6e1d4", "#34373c"],
	mark: ["#f6e2a8", "#564617"],
	flag: ["#7a5a00", "#e5c25c"]
};
/** Class and light colour of a role, for a line or for an area. */
const line = (role) => ({
	class: `s-${role}`,
	light: palette[role][0]
});
const area = (role) => ({
	class: `f-${role}`,
	light: palette[role][0]
});
/** The meters, in order: the primary first. */
function meterRole(index) {
	return [
		"a",
		"b",
		"c",
		"d"
	][index % 4];
}
// src/report/chart/reduce.ts
/** One decimal is a tenth of a pixel: finer than anyone sees. */
const round = (value) => Math.round(value * 10) / 10;
/** Lowest and highest reading, or null when there is none. */
function extent(...series) {
	let low = Infinity;
	let high = -Infinity;
	for (const values of series) for (const value of values) {
		if (value === null) continue;
		if (value < low) low = value;
		if (value > high) high = value;
	}
	return low > high ? null : [low, high];
}
/**
* The path of a series over `width` pixels. Where several seconds share a pixel the path runs through the
* lowest and the highest of them in the order in which they came, so that no peak is lost; where nothing
* was recorded it breaks.
*/
function tracePath(values, x, y) {
	const pen = new Pen();
	let at = 0;
	while (at < values.length) {
		const column = Math.floor(x(at));
		let next = at + 1;
		while (next < values.length && Math.floor(x(next)) === column) next++;
		const shared = next > at + 1;
		const kept = shared ? ends$1(values, at, next) : values[at] === null ? [] : [at];
		if (kept.length === 0) pen.lift();
		for (const index of kept) pen.to(shared ? column : x(index), y(values[index]));
		at = next;
	}
	return pen.path;
}
/** Where the lowest and the highest of values[from..to) stand, in order; none when nothing was read there. */
function ends$1(values, from, to) {
	let lowest = -1;
	let highest = -1;
	for (let at = from; at < to; at++) {
		const value = values[at] ?? null;
		if (value === null) continue;
		if (lowest < 0 || value < values[lowest]) lowest = at;
		if (highest < 0 || value > values[highest]) highest = at;
	}
	if (lowest < 0) return [];
	return lowest === highest ? [lowest] : lowest < highest ? [lowest, highest] : [highest, lowest];
}
/** Draws in tenths of a pixel, each stroke from the last: half as long as absolute places, and as exact. */
var Pen = class {
	path = "";
	x = 0;
	y = 0;
	down = false;
	lift() {
		this.down = false;
	}
	to(x, y) {
		const [right, below] = [Math.round(x * 10), Math.round(y * 10)];
		const [dx, dy] = [right - this.x, below - this.y];
		if (!this.down) this.path += `M${right / 10} ${below / 10}`;
		else if (dx === 0) this.path += dy === 0 ? "" : `v${dy / 10}`;
		else if (dy === 0) this.path += `h${dx / 10}`;
		else this.path += `l${dx / 10}${dy < 0 ? "" : " "}${dy / 10}`;
		this.x = right;
		this.y = below;
		this.down = true;
	}
};
/** A path through points, unbroken. */
function polyline(points) {
	return points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("");
}
/** First minus second, where both were read. Taken before any smoothing: a dropout must not leave a spike. */
function difference(first, second) {
	return first.map((value, index) => {
		const other = second[index] ?? null;
		return value === null || other === null ? null : value - other;
	});
}
/** Mean over `window` seconds around each second; null where less than half of them was read. */
function smooth(values, window) {
	const half = Math.floor(window / 2);
	let sum = 0;
	let read = 0;
	const take = (index, sign) => {
		const value = values[index] ?? null;
		if (value === null) return;
		sum += sign * value;
		read += sign;
	};
	for (let at = 0; at < half; at++) take(at, 1);
	return values.map((_, at) => {
		take(at + half, 1);
		take(at - half - 1, -1);
		return read > half ? sum / read : null;
	});
}
// src/report/chart/scale.ts
function linear([low, high], [start, end]) {
	const share = (end - start) / (high - low);
	return (value) => start + (value - low) * share;
}
/** Equal factors become equal distances; both ends of the domain above nought. */
function logarithmic([low, high], range) {
	const scale = linear([Math.log(low), Math.log(high)], range);
	return (value) => scale(Math.log(value));
}
/** 1, 2 or 5 times a power of ten, whichever divides the domain most nearly into `count`. */
function step([low, high], count) {
	const rough = (high - low) / Math.max(1, count);
	const power = 10 ** Math.floor(Math.log10(rough));
	const over = rough / power;
	return power * (over < Math.SQRT2 ? 1 : over < Math.sqrt(10) ? 2 : over < Math.sqrt(50) ? 5 : 10);
}
/** Multiples of the step from `first` to `last`, free of the dust that adding fractions leaves. */
function multiples(first, last, by) {
	const inverse = Math.round(1 / by);
	const at = (index) => by < 1 ? index / inverse : index * by;
	return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => at(first + index));
}
/** About `count` round values inside the domain. */
function ticks$1(domain, count) {
	const by = step(domain, count);
	return multiples(Math.ceil(domain[0] / by), Math.floor(domain[1] / by), by);
}
/** The domain widened to round values, with about `count` of them across it. */
function roundedOut(domain, count) {
	const by = step(domain, count);
	const found = multiples(Math.floor(domain[0] / by), Math.ceil(domain[1] / by), by);
	return {
		domain: [found[0], found.at(-1)],
		ticks: found
	};
}
// src/report/chart/frame.ts
/** Room for the labels of the axes, in pixels. */
const gutter = {
	left: 46,
	right: 10,
	axis: 22,
	title: 18
};
/** Widest advance of a character in the labels' type, as a share of its size: enough to keep labels apart. */
const advance = .56;
/** The whole drawing: named for those who cannot see it. */
function sheet(id, [width, height], title, description, body) {
	return svg`<svg xmlns="http://www.w3.org/2000/svg" class="chart" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="${id}-t ${id}-d" font-family="system-ui, sans-serif" font-size="${11}" stroke-linejoin="round"><title id="${id}-t">${title}</title><desc id="${id}-d">${description}</desc><rect width="${width}" height="${height}" class="f-paper" fill="${palette.paper[0]}"/>${body}</svg>`;
}
/** A domain of some width, also where the data has none. */
function wide([low, high]) {
	return high > low ? [low, high] : [low - 1, low + 1];
}
/** A panel between two heights, over the given domains; the vertical one is rounded out to its ticks. */
function panel([left, right], [top, bottom], domainX, domainY, count = 4) {
	const rounded = roundedOut(wide(domainY), count);
	return {
		left,
		right,
		top,
		bottom,
		x: linear(wide(domainX), [left, right]),
		y: linear(rounded.domain, [bottom, top]),
		ticksY: rounded.ticks
	};
}
function textWidth(text, size = 11) {
	return [...text].length * size * advance;
}
function label(text, [x, y], role = "quiet", anchor = "start") {
	const { class: name, light } = area(role);
	return svg`<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" class="${name}" fill="${light}">${text}</text>`;
}
/** A line along a path; null when there is nothing to draw. */
function path$1(d, role, width, dash) {
	if (d === "") return null;
	const { class: name, light } = line(role);
	return dash === void 0 ? svg`<path d="${d}" fill="none" class="${name}" stroke="${light}" stroke-width="${width}"/>` : svg`<path d="${d}" fill="none" class="${name}" stroke="${light}" stroke-width="${width}" stroke-dasharray="${dash}"/>`;
}
/** A filled area; null when there is nothing to draw. */
function shape(d, role) {
	if (d === "") return null;
	const { class: name, light } = area(role);
	return svg`<path d="${d}" class="${name}" fill="${light}"/>`;
}
function box([left, right], [top, bottom], role) {
	const { class: name, light } = area(role);
	return svg`<rect x="${round(left)}" y="${round(top)}" width="${round(Math.max(0, right - left))}" height="${round(Math.max(0, bottom - top))}" class="${name}" fill="${light}"/>`;
}
function rule(from, to, role, width = 1) {
	const { class: name, light } = line(role);
	return svg`<line x1="${round(from[0])}" y1="${round(from[1])}" x2="${round(to[0])}" y2="${round(to[1])}" class="${name}" stroke="${light}" stroke-width="${width}"/>`;
}
function dot([x, y], radius, role) {
	const { class: name, light } = area(role);
	return svg`<circle cx="${round(x)}" cy="${round(y)}" r="${radius}" class="${name}" fill="${light}"/>`;
}
/** Many dots in one path: round ends of strokes without length. */
function dots(points, radius, role) {
	if (points.length === 0) return null;
	const { class: name, light } = line(role);
	const d = points.map(([x, y]) => `M${round(x)} ${round(y)}h0`).join("");
	return svg`<path d="${d}" class="${name}" stroke="${light}" stroke-width="${2 * radius}" stroke-linecap="round"/>`;
}
/** Many bars that stand on `bottom` in one path: each from, to and top. */
function bars(all, bottom, role) {
	return shape(all.map(([left, right, top]) => `M${round(left)} ${round(bottom)}V${round(top)}H${round(right)}V${round(bottom)}`).join(""), role);
}
/** Round places on an axis of numbers, one to every 70 pixels or so. */
function roundTicks(domain, pixels) {
	return ticks$1(wide(domain), Math.max(2, Math.floor(pixels / 70)));
}
/** Horizontal grid lines with their numbers at the left. */
function axisLeft({ left, right, y, ticksY }, say) {
	return ticksY.flatMap((tick) => [rule([left, y(tick)], [right, y(tick)], "rule"), label(say(tick), [left - 6, y(tick) + 4], "quiet", "end")]);
}
/** Numbers along the bottom: those that fit, from the left. */
function axisBottom({ bottom, x, left, right }, ticks, say) {
	let free = -Infinity;
	return ticks.flatMap((tick) => {
		const text = say(tick);
		const half = textWidth(text) / 2;
		const at = Math.min(Math.max(x(tick), left), right);
		const mark = rule([at, bottom], [at, bottom + 4], "quiet");
		if (at - half < free) return [mark];
		free = at + half + 8;
		const anchor = at + half > right + gutter.right ? "end" : "middle";
		return [mark, label(text, [anchor === "end" ? right + gutter.right : at, bottom + 16], "quiet", anchor)];
	});
}
const steps$2 = [
	1,
	2,
	5,
	10,
	15,
	30,
	60,
	120,
	300,
	600,
	900,
	1800,
	3600,
	7200,
	14400,
	86400
];
/** Round places on an axis of time, at most `most` of them. */
function timeTicks([from, to], most) {
	const step = steps$2.find((one) => (to - from) / one <= most) ?? Math.ceil((to - from) / most);
	const ticks = [];
	for (let at = Math.ceil(from / step) * step; at <= to; at += step) ticks.push(at);
	return ticks;
}
function timeAxis(on, domain) {
	return axisBottom(on, timeTicks(domain, Math.max(2, Math.floor((on.right - on.left) / 70))), position);
}
/** What a panel shows, above its top edge: the title, then a sample of each line with its name. */
function heading({ left, top }, title, keys = []) {
	let x = left;
	const y = top - 7;
	const title_ = label(title, [x, y], "ink");
	x += textWidth(title) + 14;
	return [title_, ...keys.flatMap(({ name, role, mark = "line" }) => {
		const at = x;
		x += 18 + textWidth(name) + 12;
		const sample = mark === "area" ? box([at, at + 14], [y - 9, y + 1], role) : mark === "dot" ? dot([at + 7, y - 4], 3, role) : path$1(`M${round(at)} ${y - 4}h14`, role, 2, mark === "dashes" ? "4 3" : void 0);
		return sample === null ? [] : [sample, label(name, [at + 18, y])];
	})];
}
/** A mark over more than this share of an axis would single nothing out. */
const widestMark = .5;
/** Stretches that a finding argues from, behind the lines; never thinner than the eye sees. */
function marks({ x, left, right, top, bottom }, stretches) {
	return stretches.flatMap(([from, to]) => {
		const start = Math.max(left, x(from));
		const end = Math.min(right, Math.max(x(to), start + 1.5));
		if (end <= left || start >= right || end - start > widestMark * (right - left)) return [];
		return [box([start, end], [top, bottom], "mark"), box([start, end], [top - 3, top], "flag")];
	});
}
/** In a part of the ride, what lies outside the panel is cut off. */
function clipped({ id, view }, name, { left, right, top, bottom }, body) {
	if (view === void 0) return svg`${body}`;
	return svg`<clipPath id="${id}-${name}"><rect x="${left}" y="${top}" width="${right - left}" height="${bottom - top}"/></clipPath><g clip-path="url(#${id}-${name})">${body}</g>`;
}
/** Equal tiles in as few rows as fit, the rows as even as can be. */
function tiles(count, width, least, height) {
	const most = Math.max(1, Math.min(count, Math.floor(width / least)));
	const columns = Math.ceil(count / Math.ceil(count / most)) || 1;
	const each = width / columns;
	return {
		height: Math.ceil(count / columns) * height,
		place: (index) => ({
			left: index % columns * each,
			right: (index % columns + 1) * each,
			top: Math.floor(index / columns) * height
		})
	};
}
// src/report/chart/agreement.ts
const height$8 = 230;
const percent$3 = (value) => quantity(value, "%");
/** Difference of two meters against their mean, with the limits of agreement. */
function agreement(chart, setting) {
	const { points, mean, low, high } = chart;
	const title = "How far apart single efforts are";
	const description = `Each dot is one block: difference of the primary from the second, in per cent, against the mean of both; ${points.length} blocks. The mean difference is ${percent$3(mean)}; about 95 of 100 blocks lie between ${percent$3(low)} and ${percent$3(high)}.`;
	return {
		title,
		description,
		table: {
			head: ["line", "difference"],
			rows: [
				["mean", percent$3(mean)],
				["lower limit of agreement", percent$3(low)],
				["upper limit of agreement", percent$3(high)]
			]
		},
		strip: null,
		draw: (width) => {
			const across = extent(points.map(({ watts }) => watts)) ?? [0, 1];
			const up = extent([
				0,
				low,
				high,
				...points.map((point) => point.percent)
			]) ?? [-1, 1];
			const on = panel([gutter.left, width - gutter.right], [gutter.title + 6, height$8 - gutter.axis], across, up, 5);
			const line = (value, name) => [rule([on.left, on.y(value)], [on.right, on.y(value)], "ink", value === mean ? 2 : 1), label(name, [on.right - 4, on.y(value) - 4], "ink", "end")];
			return sheet(setting.id, [width, height$8], title, description, [
				axisLeft(on, (value) => `${value} %`),
				rule([on.left, on.y(0)], [on.right, on.y(0)], "quiet"),
				dots(points.map((point) => [on.x(point.watts), on.y(point.percent)]), 2.2, "a"),
				line(mean, percent$3(mean)),
				line(low, percent$3(low)),
				line(high, percent$3(high)),
				axisBottom(on, roundTicks(across, width), (tick) => `${number$2(tick)} W`),
				heading(on, "Primary against second", [{
					name: "block",
					role: "a",
					mark: "dot"
				}])
			]);
		}
	};
}
// src/report/chart/averaging.ts
const upper$1 = 130;
const lower$1 = 110;
/** The mark that averaging leaves: how far a change is undone some seconds later; and a typical minute. */
function averaging(chart, setting) {
	const { correlation, seconds, power, from } = chart;
	const description = `How far a change of power is undone a given number of seconds later; a dip marks averaging over that many seconds, here ${quantity(seconds, "s")}. Below it a typical minute as recorded, from ${position(from)}.`;
	return {
		title: "The mark of averaging",
		description,
		table: {
			head: ["seconds later", "agreement of changes"],
			rows: correlation.map((value, index) => [number$2(index + 1), figure$1(value, "r")])
		},
		strip: {
			label: `power from ${position(from)}`,
			values: power,
			say: (value) => `${number$2(Math.round(value))} W`
		},
		draw: (width) => {
			const sides = [gutter.left, width - gutter.right];
			const reach = extent([0, ...correlation]) ?? [0, 1];
			const over = panel(sides, [gutter.title + 6, upper$1], [.5, correlation.length + .5], reach);
			const top = upper$1 + gutter.axis + gutter.title + 10;
			const domain = [from, from + Math.max(1, power.length - 1)];
			const under = panel(sides, [top, top + lower$1], domain, [0, extent(power)?.[1] ?? 1], 3);
			return sheet(setting.id, [width, under.bottom + gutter.axis], "The mark of averaging", description, [
				axisLeft(over, (value) => figure$1(value, "r").replace(/0+$/, "").replace(/\.$/, "")),
				correlation.map((value, index) => {
					const ends = [over.y(0), over.y(value)].sort((a, b) => a - b);
					return box([over.x(index + .7), over.x(index + 1.3)], ends, index + 1 === Math.round(seconds) ? "b" : "a");
				}),
				rule([over.left, over.y(0)], [over.right, over.y(0)], "quiet"),
				axisBottom(over, correlation.map((_, index) => index + 1), (value) => `${number$2(value)} s`),
				heading(over, "Agreement of changes that many seconds apart", [{
					name: counted(Math.round(seconds), "second"),
					role: "b",
					mark: "area"
				}]),
				axisLeft(under, number$2),
				path$1(tracePath(power, (second) => under.x(from + second), under.y), "a", 1.5),
				timeAxis(under, domain),
				heading(under, "A typical minute as recorded, W")
			]);
		}
	};
}
// src/report/chart/close-ups.ts
const tileHeight$2 = 190;
const leastTile$2 = 300;
const powerHeight = 90;
const cadenceHeight = 34;
/** Single stretches from close by: power, and cadence beneath it, with the seconds meant marked. */
function closeUps(chart, setting) {
	const { closeUps: all } = chart;
	const description = `Power second by second, with cadence beneath where it was recorded, around ${all.map((one) => span(one.marked)).join(", ")}; the seconds meant are marked.`;
	return {
		title: "The seconds meant, from close by",
		description,
		table: {
			head: [
				"marked",
				"power: lowest to highest",
				"cadence: lowest to highest"
			],
			rows: all.map(({ from, power, cadence, marked }) => {
				const within = (values) => {
					const shown = extent((values ?? []).slice(Math.max(0, marked[0] - from), marked[1] - from));
					return shown === null ? "–" : `${number$2(shown[0])} to ${number$2(shown[1])}`;
				};
				return [
					span(marked),
					`${within(power)} W`,
					`${within(cadence)} rpm`
				];
			})
		},
		strip: all.length === 0 ? null : {
			label: `power around ${position(all[0].from)}`,
			values: all[0].power,
			say: (value) => `${number$2(Math.round(value))} W`
		},
		draw: (width) => {
			const grid = tiles(all.length, width, leastTile$2, tileHeight$2);
			const drawn = all.flatMap(({ from, power, cadence, marked }, index) => {
				const { left, right, top } = grid.place(index);
				const sides = [left + gutter.left, right - gutter.right - 6];
				const domain = [from, from + Math.max(1, power.length - 1)];
				const high = extent(power)?.[1] ?? 1;
				const over = panel(sides, [top + gutter.title + 6, top + gutter.title + powerHeight], domain, [0, high], 3);
				const turning = cadence === null ? null : extent(cadence);
				const under = turning === null ? null : panel(sides, [over.bottom + gutter.title + 4, over.bottom + gutter.title + cadenceHeight], domain, [0, Math.max(1, turning[1])], 2);
				return [
					...marks(over, [marked]),
					...axisLeft(over, number$2),
					path$1(tracePath(power, (second) => over.x(from + second), over.y), "a", 1.5),
					...heading(over, "Power, W"),
					...under === null ? [] : [
						...axisLeft(under, number$2),
						path$1(tracePath(cadence, (second) => under.x(from + second), under.y), "quiet", 1.25),
						...heading(under, "Cadence, rpm")
					],
					...timeAxis(under ?? over, domain)
				];
			});
			return sheet(setting.id, [width, grid.height], "The seconds meant, from close by", description, drawn);
		}
	};
}
// src/report/chart/comb.ts
const height$7 = 220;
/** Pixels a watt needs for its bar to be told from its neighbour's. */
const leastBar = 3;
/** How often each whole watt occurs, with the watts that a factor leaves empty or fills twice. */
function comb(chart, setting) {
	const { factor, stretch, marked } = chart;
	const which = factor > 1 ? "never reach" : "reach twice";
	const description = `How often each whole watt occurs over ${span(stretch)}, in the busiest part of the scale, and what neighbouring watts lead to expect. Whole numbers times ${number$2(factor)} ${which} the ${counted(marked.length, "watt")} marked below.`;
	return {
		title: "How often each whole watt occurs",
		description,
		table: {
			head: [
				"watts",
				"seconds",
				"expected",
				"marked"
			],
			rows: busiest(chart, 40).map((at) => [
				number$2(chart.from + at),
				number$2(chart.counts[at]),
				number$2(Math.round((chart.expected[at] ?? 0) * 10) / 10),
				marked.includes(chart.from + at) ? "yes" : ""
			])
		},
		strip: {
			label: "seconds at each whole watt",
			values: busiest(chart, 60).map((at) => chart.counts[at]),
			say: number$2
		},
		draw: (width) => {
			const sides = [gutter.left, width - gutter.right];
			const shown = busiest(chart, Math.floor((sides[1] - sides[0]) / leastBar));
			const first = chart.from + (shown[0] ?? 0);
			const last = first + Math.max(1, shown.length);
			const highest = Math.max(1, ...shown.map((at) => Math.max(chart.counts[at], chart.expected[at] ?? 0)));
			const on = panel(sides, [gutter.title + 6, height$7 - gutter.axis - 8], [first, last], [0, highest]);
			const among = new Set(marked);
			return sheet(setting.id, [width, height$7], "How often each whole watt occurs", description, [
				axisLeft(on, number$2),
				bars(shown.map((at) => {
					return [
						on.x(chart.from + at) + .4,
						on.x(chart.from + at + 1) - .4,
						on.y(chart.counts[at])
					];
				}), on.bottom, "a"),
				path$1(shown.filter((at) => among.has(chart.from + at)).map((at) => `M${round(on.x(chart.from + at + .5))} ${on.bottom + 2}v5`).join(""), "b", 2),
				path$1(polyline(shown.map((at) => [on.x(chart.from + at + .5), on.y(chart.expected[at] ?? 0)])), "ink", 1.25),
				axisBottom({
					...on,
					bottom: on.bottom + 8
				}, roundTicks([first, last], width), (watts) => `${number$2(watts)} W`),
				heading(on, "Seconds", [
					{
						name: "counted",
						role: "a",
						mark: "area"
					},
					{
						name: "expected",
						role: "ink"
					},
					{
						name: factor > 1 ? "never reached" : "reached twice",
						role: "b",
						mark: "area"
					}
				])
			]);
		}
	};
}
/** Indices of the `most` neighbouring watts that hold the most seconds. */
function busiest({ counts }, most) {
	const size = Math.min(most, counts.length);
	let sum = 0;
	let best = -1;
	let start = 0;
	for (let at = 0; at < counts.length; at++) {
		sum += counts[at] - (at >= size ? counts[at - size] : 0);
		if (at >= size - 1 && sum > best) {
			best = sum;
			start = at - size + 1;
		}
	}
	return Array.from({ length: size }, (_, offset) => start + offset);
}
// src/report/chart/copies.ts
const tileHeight$1 = 150;
const leastTile$1 = 300;
/** Stretches of samples that occur twice, side by side on one scale. */
function copies(chart, setting) {
	const { copies: all } = chart;
	const description = `Power of stretches that occur twice, side by side: ${all.map(({ at, seconds }) => `${quantity(seconds, "s")} at ${position(at[0])} and again at ${position(at[1])}`).join("; ")}.`;
	return {
		title: "The same samples twice",
		description,
		table: {
			head: [
				"first at",
				"again at",
				"lasts"
			],
			rows: all.map(({ at, seconds }) => [
				position(at[0]),
				position(at[1]),
				quantity(seconds, "s")
			])
		},
		strip: all.length === 0 ? null : {
			label: `power from ${position(all[0].at[0])}`,
			values: all[0].first,
			say: (value) => `${number$2(Math.round(value))} W`
		},
		draw: (width) => {
			const halves = all.flatMap(({ at, first, second }) => [{
				from: at[0],
				power: first,
				of: [first, second],
				role: "a"
			}, {
				from: at[1],
				power: second,
				of: [first, second],
				role: "b"
			}]);
			const grid = tiles(2, width, leastTile$1, tileHeight$1);
			const drawn = halves.flatMap(({ from, power, of, role }, index) => {
				const place = grid.place(index % 2);
				const left = place.left;
				const top = Math.floor(index / 2) * grid.height + place.top;
				const reach = extent(...of) ?? [0, 1];
				const domain = [from, from + Math.max(1, power.length - 1)];
				const on = panel([left + gutter.left, place.right - gutter.right - 6], [top + gutter.title + 6, top + tileHeight$1 - gutter.axis - 8], domain, [Math.min(0, reach[0]), reach[1]], 3);
				return [
					...axisLeft(on, number$2),
					path$1(tracePath(power, (second) => on.x(from + second), on.y), role, 1.5),
					...timeAxis(on, domain),
					...heading(on, index % 2 === 0 ? "First, W" : "Again, W")
				];
			});
			return sheet(setting.id, [width, grid.height * all.length], "The same samples twice", description, drawn);
		}
	};
}
// src/report/chart/coverage.ts
const rowHeight$2 = 22;
/** What became of each second around the race: recorded, lost, paused. */
function coverage(chart, setting) {
	const { recording, window, lost, paused } = chart;
	const named = [
		["race", [window]],
		["recorded", [recording]],
		["lost", lost],
		["paused", paused]
	];
	const description = `Recorded ${span(recording)}, race ${span(window)}; lost: ${lost.length === 0 ? "nothing" : spans(lost, 6)}; paused: ${paused.length === 0 ? "never" : spans(paused, 6)}.`;
	return {
		title: "What was recorded, and what is missing",
		description,
		table: {
			head: [
				"what",
				"from–to",
				"lasts"
			],
			rows: named.flatMap(([what, stretches]) => stretches.map((stretch) => [
				what,
				span(stretch),
				duration(stretch[1] - stretch[0])
			]))
		},
		strip: null,
		draw: (width) => {
			const domain = [Math.min(recording[0], window[0]), Math.max(recording[1], window[1])];
			const left = gutter.left + textWidth("recorded");
			const top = gutter.title + 6;
			const on = panel([left, width - gutter.right], [top, top + 66], domain, [0, 3]);
			const row = (index) => [top + index * rowHeight$2 + 4, top + (index + 1) * rowHeight$2 - 4];
			const at = ([from, to]) => [on.x(from), Math.max(on.x(to), on.x(from) + 1.5)];
			return sheet(setting.id, [width, on.bottom + gutter.axis], "What was recorded, and what is missing", description, [
				[
					"race",
					"recorded",
					"missing"
				].map((name, index) => label(name, [left - 8, row(index)[1] - 3], "ink", "end")),
				box(at(window), row(0), "band"),
				box(at(recording), row(1), "a"),
				paused.map((stretch) => box(at(stretch), row(2), "band")),
				lost.map((stretch) => box(at(stretch), row(2), "b")),
				timeAxis(on, domain),
				heading(on, "", [{
					name: "lost",
					role: "b",
					mark: "area"
				}, {
					name: "paused",
					role: "band",
					mark: "area"
				}])
			]);
		}
	};
}
// src/report/chart/curve.ts
const height$6 = 260;
/** The durations that riders speak of, s. */
const ticks = [
	1,
	5,
	15,
	30,
	60,
	300,
	1200,
	3600,
	7200,
	14400
];
/** The race's power–duration curve against the best of the history and what that allows. */
function curve$1(chart, setting) {
	const { points } = chart;
	const beyond = points.filter(({ race, allowed }) => race !== null && allowed !== null && race > allowed);
	const description = `Best mean power over each duration, on a logarithmic scale of time: the race, the best of the earlier rides, and the upper end of what they allow. ${beyond.length === 0 ? "The race stays within it everywhere." : `The race lies above it at ${beyond.map((point) => duration(point.duration)).join(", ")}.`}`;
	const watts = (value) => value === null ? "–" : quantity(value, "W");
	return {
		title: "Power–duration curve against the earlier rides",
		description,
		table: {
			head: [
				"duration",
				"race",
				"best of the earlier rides",
				"they allow up to"
			],
			rows: points.map((point) => [
				duration(point.duration),
				watts(point.race),
				watts(point.best),
				watts(point.allowed)
			])
		},
		strip: {
			label: "race over what the history allows",
			values: points.map(({ race, allowed }) => race === null || allowed === null || allowed <= 0 ? null : race / allowed * 100),
			say: (value) => quantity(Math.round(value), "%")
		},
		draw: (width) => {
			const durations = points.map((point) => point.duration).filter((one) => one > 0);
			const domain = [Math.min(...durations, 3600), Math.max(...durations, 1)];
			const shown = extent(...[
				"race",
				"best",
				"allowed"
			].map((key) => points.map((point) => point[key])));
			const on = {
				...panel([gutter.left, width - gutter.right], [gutter.title + 6, height$6 - gutter.axis], [0, 1], [0, shown?.[1] ?? 1]),
				x: logarithmic(domain, [gutter.left, width - gutter.right])
			};
			const along = (key) => runs(points, key).map((run) => run.map((point) => [on.x(point.duration), on.y(point[key])]));
			const range = runs(points.map((point) => point.best === null ? {
				...point,
				allowed: null
			} : point), "allowed").map((run) => polyline([...run.map((point) => [on.x(point.duration), on.y(point.allowed)]), ...[...run].reverse().map((point) => [on.x(point.duration), on.y(point.best)])]));
			return sheet(setting.id, [width, height$6], "Power–duration curve", description, [
				range.map((d) => shape(`${d}Z`, "band")).filter((one) => one !== null),
				axisLeft(on, number$2),
				path$1(along("best").map(polyline).join(""), "b", 1.75, "5 3"),
				path$1(along("race").map(polyline).join(""), "a", 2),
				beyond.map((point) => dot([on.x(point.duration), on.y(point.race)], 4, "a")),
				axisBottom(on, ticks.filter((tick) => tick >= domain[0] && tick <= domain[1]), duration),
				heading(on, "W", [
					{
						name: "race",
						role: "a"
					},
					{
						name: "best before",
						role: "b",
						mark: "dashes"
					},
					{
						name: "allowed beyond it",
						role: "band",
						mark: "area"
					}
				])
			]);
		}
	};
}
/** Unbroken runs of points at which the value is known. */
function runs(points, key) {
	const found = [[]];
	for (const point of points) if (point[key] !== null && point.duration > 0) found.at(-1).push(point);
	else if (found.at(-1).length > 0) found.push([]);
	return found.filter((run) => run.length > 0);
}
// src/report/chart/dependence.ts
const height$5 = 230;
const percent$2 = (value) => quantity(value, "%");
/** How the ratio of two meters depends on power or cadence, block by block and in bands. */
function dependence(chart, setting) {
	const { points, bands, of, unit } = chart;
	const title = `Ratio of the meters by ${of}`;
	const description = `Each dot is one block: power of the primary over the second, in per cent, against ${of}; ${points.length} blocks. Bars are the means of bands with as many blocks each, with their 95 % intervals.`;
	return {
		title,
		description,
		table: {
			head: [
				of,
				"blocks",
				"primary over second",
				"95 % interval"
			],
			rows: bands.map((band) => [
				`${number$2(Math.round(band.from))} to ${quantity(Math.round(band.to), unit)}`,
				number$2(band.count),
				percent$2(band.percent),
				`${percent$2(band.low)} to ${percent$2(band.high)}`
			])
		},
		strip: {
			label: "primary over second, low to high",
			values: bands.map((band) => band.percent),
			say: percent$2
		},
		draw: (width) => {
			const across = extent(points.map(({ x }) => x)) ?? [0, 1];
			const up = extent([
				100,
				...points.map((point) => point.percent),
				...bands.flatMap(({ low, high }) => [low, high])
			]);
			const on = panel([gutter.left, width - gutter.right], [gutter.title + 6, height$5 - gutter.axis], across, up ?? [90, 110], 5);
			return sheet(setting.id, [width, height$5], title, description, [
				axisLeft(on, (value) => `${value} %`),
				rule([on.left, on.y(100)], [on.right, on.y(100)], "quiet"),
				dots(points.map((point) => [on.x(point.x), on.y(point.percent)]), 2, "a"),
				bands.flatMap((band) => {
					const middle = (on.x(band.from) + on.x(band.to)) / 2;
					return [rule([on.x(band.from), on.y(band.percent)], [on.x(band.to), on.y(band.percent)], "ink", 2), rule([middle, on.y(band.low)], [middle, on.y(band.high)], "ink", 2)];
				}),
				axisBottom(on, roundTicks(across, width), (tick) => `${number$2(tick)} ${unit}`),
				heading(on, "Primary over second", [{
					name: "block",
					role: "a",
					mark: "dot"
				}, {
					name: "mean of a band",
					role: "ink"
				}])
			]);
		}
	};
}
// src/report/chart/efforts.ts
const tileHeight = 150;
const leastTile = 230;
const legendHeight = 18;
/** Each sprint on a panel of its own, both meters, all on one scale of watts. */
function efforts(chart, setting) {
	const { efforts: all } = chart;
	const description = `Each sprint second by second on both meters, on one scale of watts: ${all.length} in all. Beyond the steady difference the primary reads above by ${all.map((one) => quantity(one.excess, "%")).join(", ")}.`;
	const second = setting.meter(chart.subject);
	return {
		title: "Sprints, second by second",
		description,
		table: {
			head: [
				"starts at",
				"lasts",
				"primary, best 5 s",
				`${second}, best 5 s`,
				"beyond the steady difference"
			],
			rows: all.map((one) => [
				position(one.from),
				quantity(one.seconds, "s"),
				quantity(one.peakPrimary, "W"),
				quantity(one.peakSecond, "W"),
				quantity(one.excess, "%")
			])
		},
		strip: {
			label: "sprints beyond the steady difference",
			values: all.map((one) => one.excess),
			say: (value) => quantity(value, "%")
		},
		draw: (width) => {
			const grid = tiles(all.length, width, leastTile, tileHeight);
			const reach = extent(...all.flatMap((one) => [one.primary, one.second])) ?? [0, 1];
			const keys = panel([gutter.left, width], [legendHeight, 19], [0, 1], [0, 1]);
			const drawn = all.flatMap((one, index) => {
				const { left, right, top } = grid.place(index);
				const length = Math.max(one.primary.length, one.second.length);
				const domain = [one.from, one.from + length - 1];
				const on = panel([left + gutter.left, right - gutter.right - 8], [top + legendHeight + gutter.title + 6, top + legendHeight + tileHeight - gutter.axis - 6], domain, [Math.min(0, reach[0]), reach[1]], 3);
				const at = (second) => on.x(one.from + second);
				return [
					...axisLeft(on, number$2),
					path$1(tracePath(one.second, at, on.y), "b", 1.75),
					path$1(tracePath(one.primary, at, on.y), "a", 1.75),
					...timeAxis(on, domain),
					...heading(on, `${quantity(one.excess, "%")} beyond`)
				];
			});
			return sheet(setting.id, [width, legendHeight + grid.height], "Sprints, second by second", description, [heading(keys, "W", [{
				name: setting.meter("primary"),
				role: "a"
			}, {
				name: second,
				role: "b"
			}]), drawn]);
		}
	};
}
// src/report/chart/meters.ts
const height$4 = 190;
const percent$1 = (value) => quantity(value, "%");
/** Three meters or more: where each lies against the mean of the others. */
function meters(chart, setting) {
	const title = "The meters against one another";
	const description = `Each dot is one meter: its power over the race from the mean of the others, in per cent, with the place of each allowed for; ${chart.meters.length} meters. The bar is the scatter of its single blocks, where the data can tell it.`;
	const name = (subject) => setting.meter(subject);
	return {
		title,
		description,
		table: {
			head: [
				"meter",
				"mean power",
				"from the others",
				"scatter of single blocks"
			],
			rows: [...chart.meters.map(({ subject, watts, percent: value, scatter }) => [
				name(subject),
				quantity(watts, "W"),
				percent$1(value),
				scatter === null ? "cannot be told" : percent$1(scatter)
			]), ...chart.pairs.map(({ a, b, percent: value }) => [
				`${name(a)} over ${name(b)}`,
				"",
				percent$1(value),
				""
			])]
		},
		strip: null,
		draw: (width) => {
			const reach = chart.meters.flatMap(({ percent: value, scatter }) => [value - (scatter ?? 0), value + (scatter ?? 0)]);
			const on = panel([gutter.left, width - gutter.right], [gutter.title + 6, height$4 - gutter.axis], [-.5, chart.meters.length - .5], extent([0, ...reach]) ?? [-1, 1], 5);
			return sheet(setting.id, [width, height$4], title, description, [
				axisLeft(on, (value) => `${number$2(value)} %`),
				rule([on.left, on.y(0)], [on.right, on.y(0)], "quiet"),
				chart.meters.flatMap(({ subject, percent: value, scatter }, i) => [
					rule([on.x(i), on.y(value - (scatter ?? 0))], [on.x(i), on.y(value + (scatter ?? 0))], "ink", 2),
					dot([on.x(i), on.y(value)], 4, "a"),
					label(name(subject), [on.x(i), 184], "ink", "middle")
				]),
				heading(on, "From the mean of the others", [])
			]);
		}
	};
}
// src/report/chart/plateaus.ts
const height$3 = 200;
/** The levels that power keeps to, drawn over the ride around them. */
function plateaus(chart, setting) {
	const { power, plateaus: levels } = chart;
	const description = `Power through the ride with the ${levels.length} levels that it keeps to drawn as thick lines.`;
	return {
		title: "The levels that power keeps to",
		description,
		table: {
			head: [
				"from–to",
				"lasts",
				"level"
			],
			rows: levels.map(({ stretch, watts }) => [
				span(stretch),
				duration(stretch[1] - stretch[0]),
				quantity(watts, "W")
			])
		},
		strip: {
			label: "power",
			values: power,
			say: (value) => `${number$2(Math.round(value))} W`
		},
		draw: (width) => {
			const domain = [0, Math.max(1, power.length)];
			const on = panel([gutter.left, width - gutter.right], [gutter.title + 6, height$3 - gutter.axis], domain, [0, extent(power)?.[1] ?? 1]);
			const held = levels.map(({ stretch: [from, to], watts }) => `M${round(on.x(from))} ${round(on.y(watts))}H${round(Math.max(on.x(to), on.x(from) + 2))}`);
			return sheet(setting.id, [width, height$3], "The levels that power keeps to", description, [
				axisLeft(on, number$2),
				path$1(tracePath(power, on.x, on.y), "a", 1),
				path$1(held.join(""), "b", 4),
				timeAxis(on, domain),
				heading(on, "W", [{
					name: "power",
					role: "a"
				}, {
					name: "level kept to",
					role: "b"
				}])
			]);
		}
	};
}
// src/report/chart/ratio.ts
const height$2 = 210;
const percent = (value) => quantity(value, "%");
/** How the ratio of two meters runs through the ride, with its trend and where the trend crosses 100 %. */
function ratio$1(chart, setting) {
	const { blocks, trend } = chart;
	const crossings = crossingsOf(trend);
	const description = [
		`Each dot is one block: power of the primary over the second, in per cent, against time; ${blocks.length} blocks.`,
		trend.length > 0 ? `The trend runs from ${percent(trend[0].percent)} to ${percent(trend.at(-1).percent)}.` : "",
		crossings.length > 0 ? `It crosses 100 % at ${crossings.map(position).join(", ")}.` : ""
	].filter((part) => part !== "").join(" ");
	return {
		title: "Ratio of the meters through the ride",
		description,
		table: {
			head: [
				"time",
				"primary over second",
				"mean power"
			],
			rows: blocks.map((block) => [
				position(block.at),
				percent(block.percent),
				quantity(block.watts, "W")
			])
		},
		strip: {
			label: "primary over second",
			values: blocks.map((block) => block.percent),
			say: percent
		},
		draw: (width) => {
			const values = [
				100,
				...blocks.map((block) => block.percent),
				...trend.flatMap(({ low, high }) => [low, high])
			];
			const times = [...blocks, ...trend].map((block) => block.at);
			const domain = setting.view?.within ?? [Math.min(0, ...times), Math.max(1, ...times)];
			const on = panel([gutter.left, width - gutter.right], [gutter.title + 6, height$2 - gutter.axis], domain, [Math.min(...values), Math.max(...values)], 5);
			const upper = trend.map(({ at, high }) => [on.x(at), on.y(high)]);
			const lower = trend.map(({ at, low }) => [on.x(at), on.y(low)]).reverse();
			return sheet(setting.id, [width, height$2], "Ratio of the meters through the ride", description, [
				marks(on, setting.marked),
				clipped(setting, "band", on, [trend.length > 1 ? shape(`${polyline([...upper, ...lower])}Z`, "band") : null]),
				axisLeft(on, (value) => `${value} %`),
				rule([on.left, on.y(100)], [on.right, on.y(100)], "quiet"),
				clipped(setting, "lines", on, [
					dots(blocks.map((block) => [on.x(block.at), on.y(block.percent)]), 2.5, "a"),
					path$1(polyline(trend.map(({ at, percent: value }) => [on.x(at), on.y(value)])), "ink", 2),
					...crossings.flatMap((at) => [rule([on.x(at), on.y(100) - 8], [on.x(at), on.y(100) + 8], "ink", 2), label(position(at), [on.x(at) + 4, on.y(100) + 14], "ink")])
				]),
				timeAxis(on, domain),
				heading(on, "Primary over second", [
					{
						name: "block",
						role: "a",
						mark: "dot"
					},
					{
						name: "trend",
						role: "ink"
					},
					{
						name: "95 % band",
						role: "band",
						mark: "area"
					}
				])
			]);
		}
	};
}
/** Where the trend passes 100 %, in seconds of the ride. */
function crossingsOf(trend) {
	return trend.slice(1).flatMap((point, index) => {
		const before = trend[index];
		const [from, to] = [before.percent - 100, point.percent - 100];
		return from * to < 0 ? [before.at + (point.at - before.at) * from / (from - to)] : [];
	});
}
// src/report/chart/response.ts
const upper = 150;
const lower = 90;
/** Heart rate as measured and as power predicts it, and how far they are apart. */
function response(chart, setting) {
	const { blocks } = chart;
	const apart = blocks.map((block) => block.heartRate - block.predicted);
	const description = `Heart rate as measured (dots) and as power predicts it (line), and below it the difference of the two, against time; ${blocks.length} blocks.`;
	return {
		title: "Heart rate, predicted and measured",
		description,
		table: {
			head: [
				"time",
				"mean power",
				"heart rate",
				"predicted"
			],
			rows: blocks.map((block) => [
				position(block.at),
				quantity(block.watts, "W"),
				quantity(block.heartRate, "bpm"),
				quantity(block.predicted, "bpm")
			])
		},
		strip: {
			label: "heart rate, measured minus predicted",
			values: apart,
			say: (value) => quantity(value, "bpm")
		},
		draw: (width) => {
			const times = blocks.map((block) => block.at);
			const domain = setting.view?.within ?? [Math.min(0, ...times), Math.max(1, ...times)];
			const sides = [gutter.left, width - gutter.right];
			const rates = extent(blocks.flatMap((block) => [block.heartRate, block.predicted])) ?? [0, 1];
			const gaps = extent([0, ...apart]) ?? [0, 1];
			const over = panel(sides, [gutter.title + 6, upper], domain, rates);
			const under = panel(sides, [upper + gutter.title + 16, upper + gutter.title + 16 + lower], domain, gaps, 3);
			return sheet(setting.id, [width, under.bottom + gutter.axis], "Heart rate, predicted and measured", description, [
				marks(over, setting.marked),
				marks(under, setting.marked),
				axisLeft(over, number$2),
				clipped(setting, "over", over, [path$1(polyline(blocks.map((block) => [over.x(block.at), over.y(block.predicted)])), "b", 1.75), dots(blocks.map((block) => [over.x(block.at), over.y(block.heartRate)]), 2.5, "a")]),
				heading(over, "bpm", [{
					name: "measured",
					role: "a",
					mark: "dot"
				}, {
					name: "predicted from power",
					role: "b"
				}]),
				axisLeft(under, number$2),
				rule([under.left, under.y(0)], [under.right, under.y(0)], "quiet"),
				clipped(setting, "under", under, [path$1(polyline(blocks.map((block, index) => [under.x(block.at), under.y(apart[index])])), "a", 1.5)]),
				heading(under, "Measured minus predicted, bpm"),
				timeAxis(under, domain)
			]);
		}
	};
}
// src/report/chart/speed-curve.ts
const height$1 = 240;
/** Speed is recorded in m/s and spoken of in km/h. */
const kmh = 3.6;
/** Power against speed, with the curve that it keeps to. */
function speedCurve(chart, setting) {
	const { points, curve } = chart;
	const description = `Power against speed for ${points.length} seconds of the ride, with the curve that power keeps to. Measured power scatters widely around any such curve.`;
	return {
		title: "Power against speed",
		description,
		table: {
			head: ["speed", "power on the curve"],
			rows: curve.map(({ speed, watts }) => [`${number$2(Math.round(speed * kmh * 10) / 10)} km/h`, quantity(watts, "W")])
		},
		strip: null,
		draw: (width) => {
			const all = [...points, ...curve];
			const [slowest, fastest] = extent(all.map((point) => point.speed * kmh)) ?? [0, 1];
			const speeds = [Math.min(0, slowest), fastest];
			const watts = extent(all.map((point) => point.watts)) ?? [0, 1];
			const on = panel([gutter.left, width - gutter.right], [gutter.title + 6, height$1 - gutter.axis], speeds, [Math.min(0, watts[0]), watts[1]]);
			return sheet(setting.id, [width, height$1], "Power against speed", description, [
				axisLeft(on, number$2),
				dots(points.map((point) => [on.x(point.speed * kmh), on.y(point.watts)]), 1.6, "a"),
				path$1(polyline(curve.map((point) => [on.x(point.speed * kmh), on.y(point.watts)])), "b", 2),
				axisBottom(on, roundTicks(speeds, width), (tick) => `${number$2(tick)} km/h`),
				heading(on, "W", [{
					name: "one second",
					role: "a",
					mark: "dot"
				}, {
					name: "curve",
					role: "b"
				}])
			]);
		}
	};
}
// src/report/words/sentence.ts
/** Longest name shown in a sentence; files keep theirs in full in the JSON. */
const longestName = 80;
function foreign(text) {
	return { foreign: shorten$1(text, longestName) };
}
/** Puts pieces one behind another, with `between` between them. */
function join(pieces, between = "") {
	const out = [];
	const add = (piece) => {
		const last = out.at(-1);
		if (typeof piece === "string" && typeof last === "string") out[out.length - 1] = last + piece;
		else if (piece !== "") out.push(piece);
	};
	for (const [index, piece] of pieces.entries()) {
		if (index > 0) add(between);
		if (typeof piece === "number") add(String(piece));
		else if (typeof piece === "string" || "foreign" in piece) add(piece);
		else for (const one of piece) add(one);
	}
	return out;
}
/** "a, b and c". */
function list$3(pieces, last = "and") {
	if (pieces.length < 2) return join(pieces);
	return join([
		join(pieces.slice(0, -1), ", "),
		` ${last} `,
		pieces.at(-1)
	]);
}
/** In one string, strangers' words in quotation marks: for a terminal, a log, a cell. */
function plain$1(sentence) {
	return sentence.map((piece) => typeof piece === "string" ? piece : `“${piece.foreign}”`).join("");
}
/** The same with a capital at the front. */
function capital(sentence) {
	const [first, ...rest] = sentence;
	return typeof first === "string" ? [first.charAt(0).toUpperCase() + first.slice(1), ...rest] : sentence;
}
/** A name from outside our tables where only a string will do: in a drawing or a cell, which quote it themselves. */
function foreignText(text) {
	return foreign(text).foreign;
}
// src/report/chart/totals.ts
const rowHeight$1 = 34;
/** The file's own totals against what its samples give under each usual definition. */
function totals(chart, setting) {
	const { rows } = chart;
	const description = `How far what the samples give under each usual definition lies from the total that the file states, in per cent: ${rows.map((row) => `${foreignText(row.total)} ${quantity(row.off, "%")} off`).join(", ")}.`;
	return {
		title: "The file’s own totals against its samples",
		description,
		table: {
			head: [
				"total",
				"the file states",
				"its samples give",
				"nearest is off by"
			],
			rows: rows.map((row) => [
				foreignText(row.total),
				quantity(row.stated, row.unit),
				row.fromSamples.map(({ definition, value }) => `${foreignText(definition)}: ${quantity(value, row.unit)}`).join("; "),
				quantity(row.off, "%")
			])
		},
		strip: null,
		draw: (width) => {
			const apart = rows.map((row) => row.stated === 0 ? [] : row.fromSamples.map(({ value }) => (value / row.stated - 1) * 100));
			const all = [0, ...apart.flat()];
			const top = gutter.title + 6;
			const left = 12;
			const on = panel([22, width - gutter.right - 10], [top, top + rows.length * rowHeight$1], [Math.min(-1, ...all), Math.max(1, ...all)], [0, 1]);
			return sheet(setting.id, [width, on.bottom + gutter.axis], "The file’s own totals against its samples", description, [
				rule([on.x(0), on.top], [on.x(0), on.bottom], "ink"),
				rows.map((row, index) => {
					const y = top + index * rowHeight$1 + 22;
					return [
						label(`${foreignText(row.total)}: ${quantity(row.stated, row.unit)} stated`, [left, y - 9], "ink"),
						rule([on.left, y + 1], [on.right, y + 1], "rule"),
						...apart[index].map((percent) => dot([on.x(percent), y + 1], 4, "b"))
					];
				}),
				axisBottom(on, ticksAround(on.x, on.left, on.right, all), (value) => quantity(value, "%")),
				heading(on, "Samples against the total stated", [{
					name: "one definition",
					role: "b",
					mark: "dot"
				}])
			]);
		}
	};
}
/** Nought and the two ends. */
function ticksAround(x, left, right, values) {
	return [
		Math.min(-1, ...values),
		0,
		Math.max(1, ...values)
	].filter((tick) => x(tick) >= left && x(tick) <= right);
}
/** A part of the ride no longer than this, s, is seen from close by: every second shows. */
const closeUp = 600;
/** Rows of the table of numbers. */
const tableRows = 12;
/** Every second of the ride on one time axis: the difference of the meters first, then what they read. */
function traces(chart, setting) {
	const meters = metersOf(chart, setting);
	const view = setting.view ?? {
		within: [0, chart.primary.length],
		averaging: null
	};
	return {
		title: meters.length > 1 ? "Both meters through the ride" : "The ride, second by second",
		description: describe$1(chart, meters.length > 1),
		table: table$1(chart, meters),
		strip: strip$1(meters),
		draw: (width) => {
			let top = 0;
			const drawn = [];
			let last = null;
			for (const band of bandsOf(chart, meters, view)) {
				const shown = extent(...band.curves.map((curve) => curve.values));
				if (shown === null) continue;
				const on = panel([gutter.left, width - gutter.right], [top + gutter.title + 4, top + gutter.title + band.height], view.within, band.zero ? [Math.min(0, shown[0]), Math.max(0, shown[1])] : shown, band.height > 90 ? 4 : 2);
				drawn.push(...drawBand(band, on, setting, view.within[0]));
				top += gutter.title + band.height + 10;
				last = on;
			}
			if (last !== null) drawn.push(...timeAxis(last, view.within));
			return sheet(setting.id, [width, top + gutter.axis], "The ride, second by second", describe$1(chart, meters.length > 1), drawn);
		}
	};
}
function metersOf(chart, { meter }) {
	return [{
		name: meter("primary"),
		power: chart.primary
	}, ...chart.seconds.map(({ subject, power }) => ({
		name: meter(subject),
		power
	}))];
}
/** The panels from the top, their values cut to the part that is shown. */
function bandsOf(chart, meters, { within, averaging }) {
	const cut = (values) => values.slice(within[0], within[1]);
	const shown = (values) => cut(averaging === null ? values : smooth(values, averaging));
	const bands = [{
		title: "Power, W",
		height: 150,
		zero: true,
		curves: meters.map(({ name, power }, index) => ({
			values: shown(power),
			name,
			role: meterRole(index),
			width: 1.25
		})).reverse()
	}];
	if (meters.length > 1) bands.unshift(differenceBand(chart, meters, {
		within,
		averaging
	}));
	const rest = (title, values, zero) => ({
		title,
		height: 56,
		zero,
		curves: [{
			values: cut(values),
			name: "",
			role: "quiet",
			width: 1,
			behind: true
		}]
	});
	if (chart.cadence !== null) bands.push(rest("Cadence, rpm", chart.cadence, true));
	if (chart.heartRate !== null) bands.push(rest("Heart rate, bpm", chart.heartRate, false));
	return bands;
}
/** Every second of the difference with its mean in front; from close by, or averaged, the line alone. */
function differenceBand(chart, meters, { within, averaging }) {
	const others = meters.slice(1);
	const apart = others.map(({ power }) => difference(chart.primary, power));
	const cut = (values) => values.slice(within[0], within[1]);
	const close = averaging === null && within[1] - within[0] <= closeUp;
	const window = averaging ?? 30;
	const line = (values, index) => ({
		values: cut(close ? values : smooth(values, window)),
		name: [others.length > 1 ? `minus ${others[index].name}` : "", close ? "as recorded" : `${window} s mean`].filter((part) => part !== "").join(", "),
		role: others.length > 1 ? meterRole(index + 1) : "ink",
		width: 1.5
	});
	const haze = (values) => ({
		values: cut(values),
		name: "",
		role: "haze",
		width: 1,
		behind: true
	});
	return {
		title: "Primary minus second, W",
		height: 130,
		zero: true,
		curves: [...close || averaging !== null ? [] : apart.map(haze), ...apart.map(line)]
	};
}
function drawBand(band, on, setting, from) {
	const keys = band.curves.filter((curve) => curve.behind !== true).map(({ name, role }) => ({
		name,
		role
	}));
	const x = (index) => on.x(from + index);
	return [
		...marks(on, setting.marked),
		...axisLeft(on, number$2),
		band.zero && on.ticksY[0] < 0 ? rule([on.left, on.y(0)], [on.right, on.y(0)], "quiet") : null,
		...band.curves.map((curve) => path$1(tracePath(curve.values, x, on.y), curve.role, curve.width)),
		...heading(on, band.title, keys.length > 1 || band.title.startsWith("Primary") ? [...keys].reverse() : [])
	].filter((one) => one !== null);
}
function describe$1(chart, pair) {
	return `${[
		pair ? `Difference of the meters, with its mean over 30 s in front` : null,
		"power",
		chart.cadence === null ? null : "cadence",
		chart.heartRate === null ? null : "heart rate"
	].filter((part) => part !== null).join(", ")} against time, ${position(chart.primary.length)} in all. Where several seconds share a pixel the lowest and the highest are drawn. Stretches that findings argue from are marked.`;
}
/** Lowest and highest of equal parts of the ride. */
function table$1(chart, meters) {
	const length = chart.primary.length;
	const part = Math.max(60, Math.ceil(length / tableRows / 60) * 60);
	const columns = [
		...meters.map(({ name, power }) => ({
			head: `${name}, W`,
			values: power
		})),
		...chart.cadence === null ? [] : [{
			head: "cadence, rpm",
			values: chart.cadence
		}],
		...chart.heartRate === null ? [] : [{
			head: "heart rate, bpm",
			values: chart.heartRate
		}]
	];
	const rows = [];
	for (let from = 0; from < length; from += part) {
		const to = Math.min(length, from + part);
		rows.push([`${position(from)}–${position(to)}`, ...columns.map(({ values }) => {
			const shown = extent(values.slice(from, to));
			return shown === null ? "–" : `${number$2(Math.round(shown[0]))} to ${number$2(Math.round(shown[1]))}`;
		})]);
	}
	return {
		head: ["time", ...columns.map(({ head }) => `${head}: lowest to highest`)],
		rows
	};
}
function strip$1(meters) {
	const second = meters[1];
	const values = second === void 0 ? meters[0].power : difference(meters[0].power, second.power);
	return {
		label: second === void 0 ? "power" : "primary minus second",
		values,
		say: (value) => `${number$2(Math.round(value))} W`
	};
}
// src/report/chart/traits.ts
const rowHeight = 40;
/** What every rider shows, and how much of it this recording shows: a scale a trait, each in its own unit. */
function traits(chart, setting) {
	const description = `Things that every rider shows, each on its own scale; the range in which riders lie is shaded. ${chart.traits.map((trait) => `${foreignText(trait.trait)}: ${quantity(trait.value, trait.unit)}, ${trait.shown ? "shown" : "not shown"}`).join("; ")}.`;
	return {
		title: "What every rider shows",
		description,
		table: {
			head: [
				"trait",
				"this recording",
				"riders show",
				"shown"
			],
			rows: chart.traits.map((trait) => [
				foreignText(trait.trait),
				quantity(trait.value, trait.unit),
				people(trait),
				trait.shown ? "yes" : "no"
			])
		},
		strip: null,
		draw: (width) => {
			const top = gutter.title + 6;
			const height = top + chart.traits.length * rowHeight;
			const sides = [14, width - 14];
			const drawn = chart.traits.map((trait, index) => {
				const y = top + index * rowHeight + 26;
				const { value, atLeast, atMost } = trait;
				const known = [
					value,
					atLeast ?? value,
					atMost ?? value
				];
				const spread = Math.max(Math.max(...known) - Math.min(...known), Math.abs(value) * .2, .001);
				const on = panel(sides, [y - 5, y + 5], [Math.min(...known) - spread / 2, Math.max(...known) + spread / 2], [0, 1]);
				return [
					label(`${foreignText(trait.trait)}: ${quantity(value, trait.unit)}`, [sides[0], y - 10], "ink"),
					label(people(trait), [sides[1], y - 10], "quiet", "end"),
					box([atLeast === null ? on.left : on.x(atLeast), atMost === null ? on.right : on.x(atMost)], [y - 4, y + 4], "band"),
					rule([on.left, y], [on.right, y], "rule"),
					dot([on.x(value), y], 4.5, trait.shown ? "a" : "b")
				];
			});
			return sheet(setting.id, [width, height], "What every rider shows", description, [drawn, heading({ ...panel(sides, [top, height], [0, 1], [0, 1]) }, "", [
				{
					name: "where riders lie",
					role: "band",
					mark: "area"
				},
				{
					name: "shown",
					role: "a",
					mark: "dot"
				},
				{
					name: "not shown",
					role: "b",
					mark: "dot"
				}
			])]);
		}
	};
}
function people({ atLeast, atMost, unit }) {
	return atLeast !== null && atMost !== null ? range([atLeast, atMost], unit) ?? quantity(atLeast, unit) : limit({
		atLeast,
		atMost,
		end: "estimate"
	}, unit) ?? "any";
}
// src/report/chart/index.ts
/** How each kind of chart is told and drawn. The compiler names the kind that is missing here. */
const kinds$1 = {
	traces,
	ratio: ratio$1,
	dependence,
	agreement,
	meters,
	efforts,
	curve: curve$1,
	response,
	"close-ups": closeUps,
	coverage,
	totals,
	comb,
	copies,
	plateaus,
	averaging,
	"speed-curve": speedCurve,
	traits
};
function picture(chart, setting) {
	const make = kinds$1[chart.kind];
	return make(chart, setting);
}
// src/report/words/names.ts
const channelNames = {
	power: "power",
	cadence: "cadence",
	heartRate: "heart rate",
	speed: "speed",
	altitude: "altitude",
	distance: "distance",
	temperature: "temperature",
	balance: "left–right balance"
};
const factNames = {
	massKg: "body mass",
	recordClass: "record class",
	devices: "the meters as declared",
	start: "the start of the race",
	finish: "the finish of the race",
	kind: "the kind of race"
};
const formatNames = {
	fit: "FIT",
	tcx: "TCX",
	gpx: "GPX",
	csv: "CSV"
};
const placeNames = {
	crank: "crank",
	pedal: "pedals",
	hub: "hub",
	trainer: "trainer"
};
const requirementNames = {
	power: "power",
	cadence: "cadence",
	heartRate: "heart rate",
	"second recording": "a second recording",
	history: "earlier rides"
};
const sectionNames = {
	steady: ["steady stretch", "steady stretches"],
	sprint: ["sprint", "sprints"],
	"over-under": ["over-under", "over-unders"],
	"set-point block": ["set-point block", "set-point blocks"],
	climb: ["climb", "climbs"],
	coasting: ["stretch of coasting", "stretches of coasting"],
	"first third": ["first third", "first thirds"],
	"last third": ["last third", "last thirds"]
};
// src/report/words/fill.ts
/**
* `{name}` · `{name:s}` gives a bare number its unit · `{name:at}` is a place in the ride ·
* `{name|record|records}` adds the noun in the right number.
*/
const placeholder = /\{([A-Za-z][\w-]*)(?::([^{}|]+))?(?:\|([^{}|]*)\|([^{}|]*))?\}/g;
/** Strings that our own measures and readers put into a sentence, and how they are said. */
const vocabulary = new Map([
	...Object.entries({
		...channelNames,
		...factNames,
		...formatNames
	}),
	...Object.values(channelNames).map((word) => [word, word]),
	["none", "none"]
]);
/** A word of ours, or a list of them with commas; null for everything else, which is a stranger's. */
function ownWords(text) {
	const words = text.split(", ").map((word) => vocabulary.get(word));
	return words.includes(void 0) ? null : words.join(", ");
}
const isQuantity = (value) => typeof value === "object";
const isUnit = (text) => text !== void 0 && Object.hasOwn(decimals, text);
function said$2(value, unit) {
	if (typeof value === "string") return [ownWords(value) ?? foreign(value)];
	if (unit === "at") return [position(isQuantity(value) ? value.value : value)];
	if (isQuantity(value)) return [quantity(value.value, value.unit)];
	return [isUnit(unit) ? quantity(value, unit) : number$2(value)];
}
/** True when every placeholder of the template has its value. */
function fillable(template, values) {
	return [...template.matchAll(placeholder)].every(([, name]) => Object.hasOwn(values, name));
}
/** Fills a template's placeholders. A value that is not there is said to be unstated, never left blank. */
function fill(template, values) {
	const pieces = [];
	let from = 0;
	for (const match of template.matchAll(placeholder)) {
		const [whole, name, unit, one, many] = match;
		pieces.push(template.slice(from, match.index));
		from = match.index + whole.length;
		if (!Object.hasOwn(values, name)) pieces.push("an unstated value");
		else {
			const value = values[name];
			pieces.push(said$2(value, unit));
			if (one !== void 0) pieces.push(` ${value === 1 ? one : many}`);
		}
	}
	return join([...pieces, template.slice(from)]);
}
// src/report/words/reasons.ts
/** Why a check could not be made; each completes "could not be checked: …". */
const reasons$1 = {
	"no-third": {
		short: "fewer than three independent meters",
		full: "it takes three independent meters, and {meters} are here"
	},
	"no-second": { short: "no second recording was handed in" },
	"second-unreadable": { short: "the second recording could not be read" },
	"no-detail": { short: "one of the traces is too smooth or constant to compare in detail" },
	"not-secure": { short: "the two recordings could not be put on one clock with certainty" },
	"different-ride": { short: "the second recording does not look like the same ride" },
	"not-independent": { short: "the second recording is not an independent meter" },
	"too-short": {
		short: "too little time was recorded",
		full: "too little time: {seconds:s} recorded, {needed:s} needed"
	},
	"too-few-blocks": {
		short: "too few blocks of data",
		full: "too few blocks of data: {blocks} found, {needed} needed"
	},
	"too-few-efforts": {
		short: "too few efforts of the kind it looks at",
		full: "too few efforts of the kind it looks at: {efforts} found, {needed} needed"
	},
	"no-channel": {
		short: "a channel it needs was not recorded",
		full: "no {channel} was recorded"
	},
	"mostly-invalid": {
		short: "a channel it needs is mostly invalid",
		full: "{channel} is invalid or missing in {share:share} of the time"
	},
	"no-power-flow": { short: "there is hardly any pedalling with power" },
	"dead-channel": {
		short: "a channel it needs is there but zero throughout",
		full: "{channel} is there but zero throughout"
	},
	"decimal-power": {
		short: "power is not recorded in whole watts",
		full: "power is not recorded in whole watts in {share:share} of the seconds"
	},
	"irregular-recorder": {
		short: "the recorder does not write every second",
		full: "the recorder does not write every second: only {share:share} of the seconds follow one another"
	},
	"no-totals": { short: "the file states no totals of its own" },
	"no-event": { short: "the other submissions of the event are needed" },
	"no-history": { short: "no earlier rides were handed in" },
	"history-too-thin": {
		short: "the earlier rides hold too few hard efforts",
		full: "the earlier rides hold too few hard efforts: {windows} found, {needed} needed"
	},
	"no-heart-rate-range": { short: "heart rate hardly varied" },
	"no-overlap-of-power": { short: "the early and the late part of the ride share no range of power" },
	"no-drift": { short: "the difference of the meters does not drift" },
	"no-crossing": { short: "neither meter passes the other" },
	"narrow-range": {
		short: "the ride used too narrow a range",
		full: "the ride used too narrow a range of {what}"
	},
	"cannot-separate": { short: "the possible causes cannot be told apart in this ride" },
	"speed-not-tied": { short: "speed does not follow from power in this ride" },
	"no-fact": {
		short: "a fact it needs was not given",
		full: "{fact} was not given"
	},
	"nothing-required": { short: "the event requires nothing of this kind" },
	"not-a-race": { short: "the ride is no race" },
	outdoors: { short: "the ride was outdoors" },
	"switched-off": {
		short: "the rule is switched off",
		full: "the rule is switched off: {why}"
	},
	failed: {
		short: "the check itself broke: a fault of this program, not of the rider",
		full: "the check itself broke, a fault of this program and not of the rider: {message}"
	}
};
function reasonInShort(id) {
	return reasons$1[id].short;
}
function reasonInFull(reason) {
	const { short, full } = reasons$1[reason.id];
	return full !== void 0 && fillable(full, reason.values) ? fill(full, reason.values) : [short];
}
// src/report/words/grade.ts
/** The grade in one word, and what it asks of whoever decides. */
const grades = {
	clear: {
		word: "Clear",
		means: "Nothing was found that needs an answer."
	},
	query: {
		word: "Query",
		means: "Ask the rider before deciding."
	},
	refer: {
		word: "Refer",
		means: "Put this before the jury."
	},
	incomplete: {
		word: "Incomplete",
		means: "What the event requires is not all there."
	}
};
function gradeWord(grade) {
	return grades[grade].word;
}
function gradeMeans(grade) {
	return grades[grade].means;
}
/** What each level asks for; heads its group of findings. */
const levelHeadings = {
	refer: "To put before the jury",
	query: "To ask the rider about",
	note: "Worth knowing"
};
/** Levels as words inside a sentence. */
const levelWords = {
	refer: "refer",
	query: "query",
	note: "note"
};
/** "in 17 of the 36 checks; 19 could not be made". Not checked and broken never look like a pass. */
function reachSaid({ reach }) {
	const all = reach.judged + reach.notApplicable + reach.failed;
	const broken = reach.failed === 0 ? "" : `; ${counted(reach.failed, "check")} broke`;
	const open = reach.notApplicable === 0 ? "" : `; ${number$2(reach.notApplicable)} could not be made`;
	return `${number$2(reach.judged)} of ${counted(all, "check")} could be judged${open}${broken}.`;
}
/** Why much could not be judged, the weightiest first; null when everything could. */
function becauseSaid({ reach }) {
	if (reach.because.length === 0) return null;
	const said = reach.because.slice(0, 3).map(({ id, count }) => `${reasonInShort(id)} (${number$2(count)})`);
	const more = reach.because.length > said.length ? "; and other reasons" : "";
	return `What stood in the way: ${said.join("; ")}${more}.`;
}
/** What the event requires and does not have; null when nothing is missing. */
function missingSaid({ missing }) {
	if (missing.length === 0) return null;
	return `The event requires ${plain$1(list$3(missing.map((one) => requirementNames[one])))}, not found in this submission.`;
}
// src/report/words/subject.ts
const codeOf = (subject) => subject.slice(subject.indexOf(":") + 1);
/** "second recording", numbered only when there are several. */
function secondName({ submission: { seconds } }, subject, noun) {
	const index = seconds.findIndex((one) => codeOf(one.subject) === codeOf(subject));
	return `second${noun}${seconds.length > 1 && index >= 0 ? ` ${index + 1}` : ""}`;
}
/** What a finding is about, in our own words. */
function subjectName(report, subject) {
	if (subject === "primary") return "primary recording";
	if (subject === "rider") return "rider";
	if (subject === "submission") return "submission";
	if (subject === "pair") return "primary against another recording";
	const second = secondName(report, subject, " recording");
	return subject.startsWith("pair:") ? `primary against ${second}` : second;
}
/** The recording itself, also where the subject names the pair that it makes with the primary. */
function recordingName(report, { role, subject }) {
	return role === "primary" ? "primary recording" : secondName(report, subject, " recording");
}
/** For a chart's legend. */
function meterName(report, subject) {
	return subject === "primary" ? "primary" : secondName(report, subject, "");
}
/** Maker, product and serial number as the file states them. */
function deviceSaid({ maker, product, serial }) {
	const named = [maker, product].filter((part) => part !== null);
	const name = named.length === 0 ? ["not stated"] : [foreign(named.join(" "))];
	return serial === null ? name : join([
		...name,
		", serial number ",
		foreign(serial)
	]);
}
// src/report/outline.ts
/** The levels that ask for something, the gravest first. */
const gravestFirst = [
	"refer",
	"query",
	"note"
];
function outline(report) {
	const context = contextOf(report);
	const told = context.findings.map((finding, index) => tell$1(context, finding, index + 1));
	const raised = gravestFirst.map((level) => ({
		level,
		findings: told.filter((one) => one.finding.level === level)
	})).filter((group) => group.findings.length > 0);
	return {
		raised,
		fine: told.filter((one) => one.finding.level === "none"),
		unchecked: unchecked$1(context),
		rests: restsOn(report, raised),
		next: next(report, raised)
	};
}
function contextOf(report) {
	const seen = /* @__PURE__ */ new Set();
	const several = /* @__PURE__ */ new Set();
	for (const { rule } of report.measurements) (seen.has(rule) ? several : seen).add(rule);
	return {
		report,
		findings: [...gravestFirst, "none"].flatMap((level) => report.findings.filter((finding) => finding.level === level)),
		rules: new Map(report.rules.items.map((rule) => [rule.id, rule])),
		several
	};
}
const standsAlone = (told) => told.accountedBy === null;
/** Findings of the grade's own level, or the queries that add up to a referral. */
function restsOn({ grade }, raised) {
	const of = (level) => raised.find((group) => group.level === level)?.findings ?? [];
	const own = of(grade);
	return own.length === 0 && grade === "refer" ? of("query").filter(standsAlone) : own.filter(standsAlone);
}
function tell$1({ report, findings, rules, several }, finding, number) {
	const rule = rules.get(finding.rule) ?? null;
	return {
		finding,
		rule,
		number,
		title: rule?.title ?? finding.rule,
		question: rule?.question ?? finding.rule,
		about: subjectName(report, finding.subject),
		several: several.has(finding.rule),
		claim: claim(rule, finding),
		value: valueSaid(finding),
		limits: limitsSaid(finding),
		remarks: remarksSaid(finding),
		accountedBy: accountedBy(finding, findings, rules)
	};
}
/** The rule's sentence, filled with what the judge put beside it; the finding's own numbers stand in. */
function claim(rule, finding) {
	const { value, unit, interval, count, summary } = finding;
	if (value === null || interval === null) return ["The number is withheld: it would give health data away."];
	const template = rule?.claims[summary.id];
	if (template === void 0) return join([foreign(finding.rule), `: ${valueSaid(finding)}.`]);
	return capital(fill(template, {
		count,
		size: {
			value: Math.abs(value),
			unit
		},
		value: {
			value,
			unit
		},
		low: {
			value: interval[0],
			unit
		},
		high: {
			value: interval[1],
			unit
		},
		...summary.values
	}));
}
/** "14.2 % (11 to 17 %)". */
function valueSaid({ value, unit, interval }) {
	if (value === null || interval === null) return null;
	const between = range(interval, unit);
	return between === null ? quantity(value, unit) : `${quantity(value, unit)} (${between})`;
}
/** What held the level down, and the measure's own words. */
function remarksSaid({ remarks, ceiling }) {
	return [...ceiling === null ? [] : [`Not raised further: ${ceiling}`], ...remarks].map((words) => capital([/[.!?]$/.test(words) ? words : `${words}.`]));
}
function accountedBy({ explainedBy, subject }, findings, rules) {
	if (explainedBy === null) return null;
	const index = findings.findIndex((one) => one.rule === explainedBy && one.subject === subject);
	return index < 0 ? null : {
		title: rules.get(explainedBy)?.title ?? explainedBy,
		number: index + 1
	};
}
function limitsSaid({ limits, unit }) {
	const said = [...gravestFirst].reverse().flatMap((level) => {
		const one = limits[level];
		const words = one === void 0 ? null : limit(one, unit);
		return words === null ? [] : [`${levelWords[level]} ${words}`];
	});
	return said.length === 0 ? null : said.join("; ");
}
function unchecked$1({ report, rules, several }) {
	const groups = /* @__PURE__ */ new Map();
	for (const measurement of report.measurements) {
		if (measurement.state === "measured" || measurement.reason === null) continue;
		const group = groups.get(measurement.reason.id) ?? [];
		group.push(measurement);
		groups.set(measurement.reason.id, group);
	}
	return [...groups.values()].sort((a, b) => Number(b[0].state === "failed") - Number(a[0].state === "failed") || b.length - a.length).map((group) => ({
		because: reasonInShort(group[0].reason.id),
		checks: group.map((measurement) => ({
			question: rules.get(measurement.rule)?.question ?? measurement.rule,
			about: subjectName(report, measurement.subject),
			several: several.has(measurement.rule),
			why: reasonInFull(measurement.reason)
		}))
	}));
}
/** Steps that serve the same findings stand together. */
function next(report, raised) {
	const steps = /* @__PURE__ */ new Map();
	for (const { level, findings } of raised) {
		if (level === "note") continue;
		for (const told of findings.filter(standsAlone)) for (const what of new Set(told.rule?.settles)) steps.set(what, [...steps.get(what) ?? [], told]);
	}
	const groups = /* @__PURE__ */ new Map();
	for (const [what, settles] of steps) {
		const key = settles.map((told) => told.number).join();
		const group = groups.get(key) ?? {
			whats: [],
			settles
		};
		group.whats.push(what);
		groups.set(key, group);
	}
	const asked = report.missing.map((one) => requirementNames[one]);
	return [...asked.length === 0 ? [] : [{
		whats: asked.map((one) => `Ask for ${one}.`),
		settles: []
	}], ...groups.values()];
}
// src/report/page/layout.ts
function layOut(report) {
	const told = outline(report);
	const whole = new Set(report.charts.filter(isWholeRide).map(({ id }) => id));
	const place = /* @__PURE__ */ new Map();
	for (const one of [...raisedOf(told), ...told.fine]) for (const id of one.finding.charts) if (!place.has(id) && !whole.has(id)) place.set(id, one);
	return {
		report,
		told,
		place
	};
}
function isWholeRide(chart) {
	return chart.kind === "traces";
}
function raisedOf({ raised }) {
	return raised.flatMap(({ findings }) => findings);
}
/** Names for links: places in the report, which no measure or rule file can choose. */
const findingId = (number) => `finding-${number}`;
const chartId = ({ report }, { id }) => `chart-${report.charts.findIndex((chart) => chart.id === id) + 1}`;
/** The stretches marked on a chart: on the whole ride those of every raised finding, else of its own. */
function markedOn({ told, place }, chart) {
	if (isWholeRide(chart)) return raisedOf(told).flatMap(({ finding }) => finding.stretches);
	const own = place.get(chart.id);
	return own === void 0 || own.finding.level === "none" ? [] : own.finding.stretches;
}
// src/report/csv.ts
const head$1 = [
	"rule",
	"title",
	"subject",
	"about",
	"state",
	"level",
	"value",
	"low",
	"high",
	"unit",
	"count",
	"note at least",
	"note at most",
	"query at least",
	"query at most",
	"refer at least",
	"refer at most",
	"stretches",
	"sentence"
];
/** One row a check: the findings, then the checks that could not be made, which look like no pass. */
function renderCsv(report) {
	const { raised, fine } = outline(report);
	const findings = [...raised.flatMap((group) => group.findings), ...fine].map(findingRow);
	const others = report.measurements.filter((one) => one.state !== "measured").map((one) => otherRow(report, one));
	return [
		head$1,
		...findings,
		...others
	].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}
/** Quoted where needed. Text that a spreadsheet would run as a formula is kept from it by an apostrophe. */
function cell(value) {
	if (value === null) return "";
	if (typeof value === "number") return String(value);
	const text = showable(value);
	const safe = /^[\s]*[=+\-@]/.test(text) ? `'${text}` : text;
	return /[",\n\r;]/.test(safe) ? `"${safe.replaceAll("\"", "\"\"")}"` : safe;
}
function findingRow({ finding, title, about, claim }) {
	const { limits } = finding;
	return [
		finding.rule,
		title,
		finding.subject,
		about,
		"measured",
		finding.level,
		finding.value,
		finding.interval?.[0] ?? null,
		finding.interval?.[1] ?? null,
		finding.unit,
		finding.count,
		...[
			"note",
			"query",
			"refer"
		].flatMap((level) => [limits[level]?.atLeast ?? null, limits[level]?.atMost ?? null]),
		finding.stretches.map(span).join(" "),
		plain$1(claim)
	];
}
function otherRow(report, one) {
	const title = report.rules.items.find((rule) => rule.id === one.rule)?.title ?? one.rule;
	const why = one.reason === null ? "" : plain$1(reasonInFull(one.reason));
	return [
		one.rule,
		title,
		one.subject,
		subjectName(report, one.subject),
		one.state,
		...Array(13).fill(null),
		why
	];
}
// src/report/client/pack.ts
function isLive(chart) {
	return chart.kind === "traces" || chart.kind === "ratio" || chart.kind === "response";
}
const small = 26;
function pack(values) {
	const scale = values.every((value) => value === null || Number.isInteger(value)) ? 1 : 10;
	let last = 0;
	return {
		scale,
		changes: values.map((value) => {
			if (value === null) return "_";
			const scaled = Math.round(value * scale);
			const change = scaled - last;
			last = scaled;
			if (change === 0) return "0";
			if (Math.abs(change) > small) return `(${change})`;
			return String.fromCharCode((change > 0 ? 96 : 64) + Math.abs(change));
		}).join("")
	};
}
function packChart(chart) {
	if (chart.kind !== "traces") return chart;
	const { primary, seconds, cadence, heartRate } = chart;
	return {
		...chart,
		primary: pack(primary),
		seconds: seconds.map(({ subject, power }) => ({
			subject,
			power: pack(power)
		})),
		cadence: cadence === null ? null : pack(cadence),
		heartRate: heartRate === null ? null : pack(heartRate)
	};
}
// src/report/words/live.ts
/** What the page's own controls say. */
const live = {
	tools: "Look closer at the ride",
	zoomIn: "Closer",
	zoomOut: "Wider",
	whole: "Whole ride",
	averaged: (seconds) => `As judged: means over ${seconds} s`,
	chart: "The ride: arrow keys read second by second (with Shift ten at once), plus and minus zoom, 0 shows the whole ride",
	hint: "Point at the chart to read it, drag across it to zoom in.",
	showing: (within) => `Showing ${span(within)}.`
};
// src/report/page/said.ts
/** A sentence with strangers' words set apart, so that they neither mix with ours nor turn our direction. */
function said$1(sentence) {
	return sentence.map((piece) => typeof piece === "string" ? piece : html`<q><bdi>${piece.foreign}</bdi></q>`);
}
/** A section of the page: its heading in the margin, its content beside it. `kind` sets the line above. */
function section(id, title, content, kind = "") {
	return html`<section class="row ${kind}" aria-labelledby="${id}"><h2 id="${id}">${title}</h2><div>${content}</div></section>`;
}
/** A part of a section under a heading of its own. */
function part(title, content) {
	return html`<div class="part"><h3>${title}</h3>${content}</div>`;
}
/** A list of terms with what is said of each; terms without a text are left out. */
function terms(rows) {
	return html`<dl>${rows.filter(([, text]) => text !== null && text !== "").map(([term, text]) => html`<div><dt>${term}</dt><dd>${text}</dd></div>`)}</dl>`;
}
function bullets(items) {
	return html`<ul>${items.map((item) => html`<li>${item}</li>`)}</ul>`;
}
/** A table that scrolls by itself where the page is narrow, also by keyboard. */
function table(caption, head, rows, kind = "words") {
	return html`<div class="scroll" role="group" tabindex="0" aria-label="${caption}"><table class="${kind}"><caption>${caption}</caption><thead><tr>${head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead><tbody>${rows.map(([first, ...others]) => html`<tr><th scope="row">${first}</th>${others.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody></table></div>`;
}
// src/report/page/figure.ts
/** A drawing is made at two widths, in CSS pixels: its letters keep their size on a telephone, without scripts. */
const widths$1 = {
	wide: 760,
	narrow: 328
};
/** A table no longer than this is shown at once. */
const shortTable = 8;
/** A longer one than this is thinned: nobody reads it here, and the JSON holds it whole. */
const longTable = 60;
function bothWidths(draw, id) {
	return html`<div class="wide">${draw(widths$1.wide, `${id}-w`)}</div><div class="narrow">${draw(widths$1.narrow, `${id}-n`)}</div>`;
}
/** A chart with its title and the numbers that it argues from. */
function figure(layout, chart) {
	const { report } = layout;
	const marked = markedOn(layout, chart);
	const id = chartId(layout, chart);
	const of = (named) => picture(chart, {
		id: named,
		marked,
		meter: (subject) => meterName(report, subject)
	});
	const { title, description, table: numbers } = of(id);
	const shown = numbersOf(title, numbers);
	return html`<figure id="${id}"><figcaption>${title}</figcaption>${steering(report, chart)}${isLive(chart) && host(chart)}${bothWidths((width, named) => of(named).draw(width), id)}<p class="fine-print">${description}</p>${numbers.rows.length === 0 ? null : numbers.rows.length <= shortTable ? html`<details open="open"><summary>The numbers</summary>${shown}</details>` : html`<details><summary>The numbers</summary>${shown}</details>`}</figure>`;
}
function numbersOf(title, { head, rows }) {
	const step = Math.ceil(rows.length / longTable);
	return table(step === 1 ? `${title}: the numbers` : `${title}: one row in ${step}; all stand in the JSON report`, head, rows.filter((_, index) => index % step === 0), "numbers");
}
/** Where the page's script draws again; hidden without it. */
function host(chart) {
	return isWholeRide(chart) ? html`<div class="live" tabindex="0" role="group" aria-label="${live.chart}" hidden="hidden"></div>` : html`<div class="live" hidden="hidden"></div>`;
}
/** What the whole ride is steered by; hidden without the script. */
function steering(report, chart) {
	if (!isWholeRide(chart)) return null;
	const button = (what, text) => html`<button type="button" data-do="${what}">${text}</button>`;
	return html`<div class="tools" role="group" aria-label="${live.tools}" hidden="hidden">${button("in", live.zoomIn)}${button("out", live.zoomOut)}${button("whole", live.whole)}<button type="button" data-do="averaged" aria-pressed="false">${live.averaged(judgedAveraging(report))}</button><output>${live.hint}</output></div>`;
}
/** Blocks that the measures averaged over, s; the drawing's own where none says. */
function judgedAveraging({ measurements }) {
	return measurements.map(({ options }) => options.blockSeconds).find((one) => typeof one === "number") ?? 30;
}
/** What the page's script needs, as JSON: the charts that it draws again, and the meters' names. */
function liveData(layout) {
	const { report } = layout;
	const all = report.charts.filter(isLive);
	if (!all.some(isWholeRide)) return null;
	const subjects = ["primary", ...report.submission.seconds.map(({ subject }) => subject)];
	return jsonBlock("live-data", {
		averaging: judgedAveraging(report),
		meters: Object.fromEntries(subjects.map((subject) => [subject, meterName(report, subject)])),
		charts: all.map((chart) => ({
			figure: chartId(layout, chart),
			marked: markedOn(layout, chart),
			chart: packChart(chart)
		}))
	});
}
// src/report/chart/gauge.ts
const height = 74;
const middle = 40;
/** Standard deviations that hold about 95 of 100 honest submissions. */
const honestReach = 2;
/**
* A finding's number on a scale: the value with its interval, the limits of each level, and where honest
* submissions lie. Null when the number is withheld.
*/
function gauge(finding, id, description) {
	const { value, interval, expected, unit } = finding;
	if (value === null || interval === null) return null;
	const limits = limitsOf(finding);
	const honest = expected === null ? null : honestRange(expected.field);
	return (width) => {
		const known = [
			value,
			...interval,
			...limits.map((one) => one.at),
			...honest ?? []
		];
		const [low, high] = [Math.min(...known), Math.max(...known)];
		const margin = (high - low) * .08 || Math.max(Math.abs(high) * .2, 1);
		const on = panel([8, width - 8], [31, 49], [low - margin, high + margin], [0, 1]);
		const named = limits.map((one) => ({
			...one,
			text: `${levelWords[one.level]} ${quantity(one.at, unit)}`
		}));
		return sheet(id, [width, height], "The number on a scale", description, [
			honest === null ? null : [box([on.x(honest[0]), on.x(honest[1])], [31, 49], "band")],
			rule([8, middle], [width - 8, middle], "rule"),
			low - margin < 0 && high + margin > 0 ? [rule([on.x(0), 31], [on.x(0), 49], "quiet"), label("0", [on.x(0), 62], "quiet", "middle")] : null,
			placed(named, on.x, width).map(({ at, text, x, row }) => [rule([on.x(at), 28 - row * 13], [on.x(at), 50], "quiet", 1.5), label(text, [x, 25 - row * 13], "quiet")]),
			interval[0] === interval[1] ? null : rule([on.x(interval[0]), middle], [on.x(interval[1]), middle], "ink", 3),
			dot([on.x(value), middle], 5.5, "ink"),
			label(quantity(value, unit), [clampText(on.x(value), quantity(value, unit), width), 67], "ink")
		]);
	};
}
function honestRange({ centre, spread }) {
	return [centre - honestReach * spread, centre + honestReach * spread];
}
function limitsOf({ limits }) {
	return [
		"note",
		"query",
		"refer"
	].flatMap((level) => {
		const one = limits[level];
		return [one?.atLeast, one?.atMost].flatMap((at) => at === null || at === void 0 ? [] : [{
			level,
			at
		}]);
	});
}
function clampText(x, text, width) {
	const long = textWidth(text);
	return Math.min(Math.max(2, x - long / 2), width - long - 2);
}
/** Labels of the limits in two rows, so that neighbours do not run into each other. */
function placed(limits, x, width) {
	const free = [-Infinity, -Infinity];
	return [...limits].sort((a, b) => a.at - b.at).map((one) => {
		const left = clampText(x(one.at), one.text, width);
		const row = left > free[0] ? 0 : 1;
		free[row] = left + textWidth(one.text) + 8;
		return {
			...one,
			x: left,
			row
		};
	});
}
// src/report/words/source.ts
/** Where a rule's limits come from, in one sentence. The text is the rule author's. */
function sourceSaid({ source }) {
	switch (source.kind) {
		case "published": return `Published: ${source.citation}`;
		case "common practice": return `Common practice, no published source: ${source.note}`;
		case "from memory": return `From memory, to be checked: ${source.note}`;
		case "measured": return `Measured: ${source.note}`;
	}
}
/** How often honest submissions reach each level by this rule; null where it was not measured. */
function falseAlarmSaid({ source, limits }) {
	if (source.kind !== "measured") return null;
	const said = ["query", "refer"].filter((level) => limits[level] !== void 0).map((level) => `${level}: ${oneIn(source.falseAlarm[level])}`);
	return said.length === 0 ? null : `Honest submissions that reach it, ${said.join("; ")}.`;
}
// src/report/page/findings.ts
/** Stretches named before "and n more". */
const mostStretches = 8;
/** The whole ride on one time axis, with the stretches marked that raised findings argue from. */
function overview(layout) {
	const charts = layout.report.charts.filter(isWholeRide);
	if (charts.length === 0) return null;
	return section("ride", "The ride at a glance", charts.map((chart) => figure(layout, chart)));
}
/** Findings that ask for something, by level. */
function raisedFindings(layout) {
	return html`${layout.told.raised.map(({ level, findings }) => section(`level-${level}`, levelHeadings[level], findings.map((told) => finding(layout, told)), level))}`;
}
function finding(layout, told) {
	const { rule, finding, accountedBy } = told;
	const charts = layout.report.charts.filter((chart) => finding.charts.includes(chart.id) && !isWholeRide(chart));
	return html`<article class="finding" id="${findingId(told.number)}"><p class="eyebrow">${plain$1(capital([told.about]))}<code>${finding.rule}</code></p><h3>${told.title}</h3><p class="claim">${said$1(told.claim)}</p>${told.remarks.map((remark) => html`<p>${said$1(remark)}</p>`)}${accountedBy !== null && html`<p>Accounted for by another finding: <a href="#${findingId(accountedBy.number)}">${accountedBy.title}</a>.</p>`}${scale(told)}${charts.map((chart) => chartOf(layout, chart, told))}${rule !== null && accountedBy === null && sides(rule)}${basis$1(layout, told)}</article>`;
}
function sides({ innocent, settles }) {
	return html`<div class="sides">${innocent.length > 0 && html`<div><h4>It may be innocent</h4>${bullets(innocent)}</div>`}${settles.length > 0 && html`<div><h4>What would settle it</h4>${bullets(settles)}</div>`}</div>`;
}
function basis$1(layout, { finding, rule }) {
	const { stretches, chance } = finding;
	return terms([
		["When", stretches.length > 0 ? when(layout, stretches) : null],
		["How often honest riders show this", chance === null ? null : `${plain$1(capital([oneIn(chance)]))}. This does not say how likely this rider is honest.`],
		["Where the limits come from", rule === null ? null : sourceSaid(rule)],
		["False alarms", rule === null ? null : falseAlarmSaid(rule)]
	]);
}
/** The stretches as links: to the ride above, and with the page's script to their very seconds. */
function when(layout, stretches) {
	const ride = layout.report.charts.find(isWholeRide);
	const more = stretches.length - mostStretches;
	return [...stretches.slice(0, mostStretches).map((stretch, index) => [index > 0 && ", ", ride === void 0 ? span(stretch) : html`<a href="#${chartId(layout, ride)}" data-from="${stretch[0]}" data-to="${stretch[1]}">${span(stretch)}</a>`]), more > 0 && ` and ${more} more`];
}
/** The number with its interval against its limits, drawn and in words. */
function scale({ finding, number, value, limits }) {
	if (value === null) return null;
	const words = [value, limits].filter((part) => part !== null).join("; ");
	return html`<figure><figcaption>${words}</figcaption>${gauge(finding, "", words) !== null && bothWidths((width, id) => gauge(finding, id, words)(width), `gauge-${number}`)}<p class="fine-print">${scaleKey(finding)}</p></figure>`;
}
/** How to read the scale. */
function scaleKey({ interval, expected }) {
	const dot = interval !== null && interval[0] === interval[1] ? "Dot: the number, counted and not estimated." : "Dot and bar: the number with its 95 % interval.";
	return expected === null ? dot : `${dot} Shaded: where about 95 of 100 honest submissions lie.`;
}
function chartOf(layout, chart, told) {
	const drawnAt = layout.place.get(chart.id);
	return drawnAt === void 0 || drawnAt === told ? figure(layout, chart) : html`<p class="fine-print"><a href="#${chartId(layout, chart)}">Its chart stands under “${drawnAt.title}”.</a></p>`;
}
// src/report/page/rest.ts
/** What was checked and found fine, with the charts that only these checks argue from. */
function fineFindings(layout) {
	const { fine } = layout.told;
	if (fine.length === 0) return null;
	const charts = layout.report.charts.filter((chart) => layout.place.get(chart.id)?.finding.level === "none");
	return section("fine", "Checked and found fine", html`${terms(fine.map((told) => [told.several ? `${told.question} (${told.about})` : told.question, html`${said$1(told.claim)} <span class="fine-print">${[told.value, told.limits].filter((part) => part !== null).join("; ")}</span>`]))}${charts.length > 0 && html`<details><summary>Charts of these checks</summary>${charts.map((chart) => figure(layout, chart))}</details>`}`, "checks");
}
/** What could not be checked, and why: never to be mistaken for a pass. */
function uncheckedMeasures({ told: { unchecked } }) {
	if (unchecked.length === 0) return null;
	return section("unchecked", "What could not be checked, and why", unchecked.map(({ because, checks }) => part(`${plain$1(capital([because]))} (${number$2(checks.length)})`, html`<ul>${checks.map(({ question, about, why }) => html`<li>${question} <span class="quiet">(${about}${plain$1(why) !== because && html`: ${said$1(why)}`})</span></li>`)}</ul>`)));
}
// src/report/client/script.ts
const script = "(function(){let e=/[\\p{Cc}\\p{Cs}\\u00ad\\u061c\\u180e\\u200b\\u200e\\u200f\\u2028-\\u202e\\u2060-\\u2069\\ufeff\\ufff9-\\ufffb\\ufffe\\uffff\\u{e0000}-\\u{e007f}]/gu;function t(t){return t.replace(e,`�`)}let n=/* @__PURE__ */ new WeakSet;function r(e){let t={toString:()=>e};return n.add(t),t}function i(e){return t(e).replace(/[&<>\"']/g,e=>`&#${e.charCodeAt(0)};`)}let a=/^(on.*|style|srcdoc|src|srcset|action|formaction|data|poster|ping|background|cite|xmlns.*)$/i,o=/^(href|xlink:href)$/i,s=/^(script|style|iframe|noscript|xmp|noembed|noframes|plaintext)$/i;function c(e){let t=[],n=`text`,r=``,i=``,c=``,l=``;for(let[u,d]of e.entries()){let f=0;for(;f<d.length;){let e=d.slice(f);if(n===`text`){let t=/^<(\\/?)([a-zA-Z][\\w:-]*)/.exec(e);if(e[0]===`<`&&t===null)throw Error(`neither tag nor text: ${e.slice(0,20)}`);t===null?f++:(l=t[1]===`/`?``:s.test(t[2])?t[2]:l,n=`tag`,f+=t[0].length)}else if(n===`tag`){let t=/^[\\w:.-]+(?==)/.exec(e);e[0]===`>`&&(n=`text`),t===null?f++:(r=t[0],n=`name`,f+=t[0].length+1)}else if(n===`name`){if(e[0]!==`\"`&&e[0]!==`'`)throw Error(`attribute ${r} is not quoted`);i=e[0],c=``,n=`value`,f++}else e[0]===i?n=`tag`:c+=e[0],f++}if(u===e.length-1)break;if(n===`text`&&l===``)t.push(`text`);else if(n===`value`&&!a.test(r)&&(!o.test(r)||c.startsWith(`#`)))t.push(`attribute`);else throw Error(`no value may stand after …${d.slice(-40)}`)}if(n!==`text`)throw Error(`a template ends inside a tag: …${e.at(-1).slice(-40)}`);return t}let l=/* @__PURE__ */ new WeakMap;function u(e){let t=l.get(e);return t===void 0&&(t=c(e),l.set(e,t)),t}function d(e,t){if(e==null||e===!1)return``;if(typeof e==`string`)return i(e);if(typeof e==`number`){if(!Number.isFinite(e))throw Error(`not a number to print: ${e}`);return String(e)}if(t===`text`){if(Array.isArray(e))return e.map(e=>d(e,t)).join(``);if(n.has(e))return e.toString()}throw Error(`neither text nor markup in ${t}: ${typeof e}`)}function f(e,...t){let n=u(e),i=e[0];for(let[r,a]of t.entries())i+=d(a,n[r])+e[r+1];return r(i)}let p=f,m={\"%\":1,W:1,\"W/kg\":2,rpm:1,bpm:1,N·m:1,kJ:1,kg:1,s:1,min:1,count:0,share:3,ratio:3,r:3},ee=[`ratio`,`r`];function h(e,t,n){let r=Math.abs(e).toFixed(t),[i,a]=(n||!r.includes(`.`)?r:r.replace(/\\.?0+$/,``)).split(`.`),o=i.length>4?i.replace(/\\B(?=(\\d{3})+$)/g,`,`):i,s=a===void 0?o:`${o}.${a}`;return e<0&&/[1-9]/.test(s)?`−`+s:s}function g(e){return h(e,3,!1)}function _(e,t){return t===`share`?h(e*100,m.share-2,!1):h(e,m[t],ee.includes(t))}function te(e){return e===`share`?`%`:e===`count`||e===`ratio`||e===`r`?``:e}function ne(e,t){return t===`s`&&Number.isInteger(e)&&Math.abs(e)>=120}function v(e,t){if(ne(e,t))return re(e);let n=te(t);return n===``?_(e,t):_(e,t)+`\\xA0`+n}function re(e){let t=Math.round(Math.abs(e)),n=[[Math.floor(t/3600),`h`],[Math.floor(t/60)%60,`min`],[t%60,`s`]].filter(([e])=>e>0).map(([e,t])=>`${e}\xA0${t}`);return(e<0&&n.length>0?`−`:``)+(n.length>0?n.join(` `):`0\\xA0s`)}function y(e){let t=Math.abs(Math.round(e)),n=e=>String(e).padStart(2,`0`),r=Math.floor(t/3600),i=Math.floor(t/60)%60,a=r>0?`${r}:${n(i)}:${n(t%60)}`:`${i}:${n(t%60)}`;return e<0?`−`+a:a}function ie([e,t]){return`${y(e)}–${y(t)}`}let b={ink:[`#1d2126`,`#ebe7de`],quiet:[`#575d66`,`#a9a69e`],rule:[`#d9d5cb`,`#3a3d42`],paper:[`#fffdf8`,`#16181b`],a:[`#0b5394`,`#7db8f2`],b:[`#c4550d`,`#f5a05f`],c:[`#00785a`,`#59c9a5`],d:[`#8e3b76`,`#dd95c8`],haze:[`#c3bba8`,`#5b5f66`],band:[`#e6e1d4`,`#34373c`],mark:[`#f6e2a8`,`#564617`],flag:[`#7a5a00`,`#e5c25c`]},x=e=>({class:`s-${e}`,light:b[e][0]}),S=e=>({class:`f-${e}`,light:b[e][0]});function C(e){return[`a`,`b`,`c`,`d`][e%4]}let w=e=>Math.round(e*10)/10;function T(...e){let t=1/0,n=-1/0;for(let r of e)for(let e of r)e!==null&&(e<t&&(t=e),e>n&&(n=e));return t>n?null:[t,n]}function ae(e,t,n){let r=new oe,i=0;for(;i<e.length;){let a=Math.floor(t(i)),o=i+1;for(;o<e.length&&Math.floor(t(o))===a;)o++;let s=o>i+1,c=s?E(e,i,o):e[i]===null?[]:[i];c.length===0&&r.lift();for(let i of c)r.to(s?a:t(i),n(e[i]));i=o}return r.path}function E(e,t,n){let r=-1,i=-1;for(let a=t;a<n;a++){let t=e[a]??null;t!==null&&((r<0||t<e[r])&&(r=a),(i<0||t>e[i])&&(i=a))}return r<0?[]:r===i?[r]:r<i?[r,i]:[i,r]}var oe=class{path=``;x=0;y=0;down=!1;lift(){this.down=!1}to(e,t){let[n,r]=[Math.round(e*10),Math.round(t*10)],[i,a]=[n-this.x,r-this.y];this.down?i===0?this.path+=a===0?``:`v${a/10}`:a===0?this.path+=`h${i/10}`:this.path+=`l${i/10}${a<0?``:` `}${a/10}`:this.path+=`M${n/10} ${r/10}`,this.x=n,this.y=r,this.down=!0}};function D(e){return e.map(([e,t],n)=>`${n===0?`M`:`L`}${w(e)} ${w(t)}`).join(``)}function O(e,t){return e.map((e,n)=>{let r=t[n]??null;return e===null||r===null?null:e-r})}function k(e,t){let n=Math.floor(t/2),r=0,i=0,a=(t,n)=>{let a=e[t]??null;a!==null&&(r+=n*a,i+=n)};for(let e=0;e<n;e++)a(e,1);return e.map((e,t)=>(a(t+n,1),a(t-n-1,-1),i>n?r/i:null))}function A([e,t],[n,r]){let i=(r-n)/(t-e);return t=>n+(t-e)*i}function se([e,t],n){let r=(t-e)/Math.max(1,n),i=10**Math.floor(Math.log10(r)),a=r/i;return i*(a<Math.SQRT2?1:a<Math.sqrt(10)?2:a<Math.sqrt(50)?5:10)}function ce(e,t,n){let r=Math.round(1/n),i=e=>n<1?e/r:e*n;return Array.from({length:Math.max(0,t-e+1)},(t,n)=>i(e+n))}function le(e,t){let n=se(e,t),r=ce(Math.floor(e[0]/n),Math.ceil(e[1]/n),n);return{domain:[r[0],r.at(-1)],ticks:r}}let j={left:46,right:10,axis:22,title:18};function M(e,[t,n],r,i,a){return p`<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"chart\" viewBox=\"0 0 ${t} ${n}\" width=\"${t}\" height=\"${n}\" role=\"img\" aria-labelledby=\"${e}-t ${e}-d\" font-family=\"system-ui, sans-serif\" font-size=\"${11}\" stroke-linejoin=\"round\"><title id=\"${e}-t\">${r}</title><desc id=\"${e}-d\">${i}</desc><rect width=\"${t}\" height=\"${n}\" class=\"f-paper\" fill=\"${b.paper[0]}\"/>${a}</svg>`}function N([e,t]){return t>e?[e,t]:[e-1,e+1]}function P([e,t],[n,r],i,a,o=4){let s=le(N(a),o);return{left:e,right:t,top:n,bottom:r,x:A(N(i),[e,t]),y:A(s.domain,[r,n]),ticksY:s.ticks}}function F(e,t=11){return[...e].length*t*.56}function I(e,[t,n],r=`quiet`,i=`start`){let{class:a,light:o}=S(r);return p`<text x=\"${w(t)}\" y=\"${w(n)}\" text-anchor=\"${i}\" class=\"${a}\" fill=\"${o}\">${e}</text>`}function L(e,t,n,r){if(e===``)return null;let{class:i,light:a}=x(t);return r===void 0?p`<path d=\"${e}\" fill=\"none\" class=\"${i}\" stroke=\"${a}\" stroke-width=\"${n}\"/>`:p`<path d=\"${e}\" fill=\"none\" class=\"${i}\" stroke=\"${a}\" stroke-width=\"${n}\" stroke-dasharray=\"${r}\"/>`}function ue(e,t){if(e===``)return null;let{class:n,light:r}=S(t);return p`<path d=\"${e}\" class=\"${n}\" fill=\"${r}\"/>`}function R([e,t],[n,r],i){let{class:a,light:o}=S(i);return p`<rect x=\"${w(e)}\" y=\"${w(n)}\" width=\"${w(Math.max(0,t-e))}\" height=\"${w(Math.max(0,r-n))}\" class=\"${a}\" fill=\"${o}\"/>`}function z(e,t,n,r=1){let{class:i,light:a}=x(n);return p`<line x1=\"${w(e[0])}\" y1=\"${w(e[1])}\" x2=\"${w(t[0])}\" y2=\"${w(t[1])}\" class=\"${i}\" stroke=\"${a}\" stroke-width=\"${r}\"/>`}function de([e,t],n,r){let{class:i,light:a}=S(r);return p`<circle cx=\"${w(e)}\" cy=\"${w(t)}\" r=\"${n}\" class=\"${i}\" fill=\"${a}\"/>`}function B(e,t,n){if(e.length===0)return null;let{class:r,light:i}=x(n),a=e.map(([e,t])=>`M${w(e)} ${w(t)}h0`).join(``);return p`<path d=\"${a}\" class=\"${r}\" stroke=\"${i}\" stroke-width=\"${2*t}\" stroke-linecap=\"round\"/>`}function V({left:e,right:t,y:n,ticksY:r},i){return r.flatMap(r=>[z([e,n(r)],[t,n(r)],`rule`),I(i(r),[e-6,n(r)+4],`quiet`,`end`)])}function H({bottom:e,x:t,left:n,right:r},i,a){let o=-1/0;return i.flatMap(i=>{let s=a(i),c=F(s)/2,l=Math.min(Math.max(t(i),n),r),u=z([l,e],[l,e+4],`quiet`);if(l-c<o)return[u];o=l+c+8;let d=l+c>r+j.right?`end`:`middle`;return[u,I(s,[d===`end`?r+j.right:l,e+16],`quiet`,d)]})}let fe=[1,2,5,10,15,30,60,120,300,600,900,1800,3600,7200,14400,86400];function pe([e,t],n){let r=fe.find(r=>(t-e)/r<=n)??Math.ceil((t-e)/n),i=[];for(let n=Math.ceil(e/r)*r;n<=t;n+=r)i.push(n);return i}function U(e,t){return H(e,pe(t,Math.max(2,Math.floor((e.right-e.left)/70))),y)}function W({left:e,top:t},n,r=[]){let i=e,a=t-7,o=I(n,[i,a],`ink`);return i+=F(n)+14,[o,...r.flatMap(({name:e,role:t,mark:n=`line`})=>{let r=i;i+=18+F(e)+12;let o=n===`area`?R([r,r+14],[a-9,a+1],t):n===`dot`?de([r+7,a-4],3,t):L(`M${w(r)} ${a-4}h14`,t,2,n===`dashes`?`4 3`:void 0);return o===null?[]:[o,I(e,[r+18,a])]})]}function G({x:e,left:t,right:n,top:r,bottom:i},a){return a.flatMap(([a,o])=>{let s=Math.max(t,e(a)),c=Math.min(n,Math.max(e(o),s+1.5));return c<=t||s>=n||c-s>.5*(n-t)?[]:[R([s,c],[r,i],`mark`),R([s,c],[r-3,r],`flag`)]})}function K({id:e,view:t},n,{left:r,right:i,top:a,bottom:o},s){return t===void 0?p`${s}`:p`<clipPath id=\"${e}-${n}\"><rect x=\"${r}\" y=\"${a}\" width=\"${i-r}\" height=\"${o-a}\"/></clipPath><g clip-path=\"url(#${e}-${n})\">${s}</g>`}let q={tools:`Look closer at the ride`,zoomIn:`Closer`,zoomOut:`Wider`,whole:`Whole ride`,averaged:e=>`As judged: means over ${e} s`,chart:`The ride: arrow keys read second by second (with Shift ten at once), plus and minus zoom, 0 shows the whole ride`,hint:`Point at the chart to read it, drag across it to zoom in.`,showing:e=>`Showing ${ie(e)}.`};function me(e,t){let n=t.map(({name:e,value:t})=>`${e} ${t??`not recorded`}`);return[y(e),...n].join(` · `)}let J=e=>v(e,`%`);function he(e,t){let{blocks:n,trend:r}=e,i=ge(r),a=[`Each dot is one block: power of the primary over the second, in per cent, against time; ${n.length} blocks.`,r.length>0?`The trend runs from ${J(r[0].percent)} to ${J(r.at(-1).percent)}.`:``,i.length>0?`It crosses 100 % at ${i.map(y).join(`, `)}.`:``].filter(e=>e!==``).join(` `);return{title:`Ratio of the meters through the ride`,description:a,table:{head:[`time`,`primary over second`,`mean power`],rows:n.map(e=>[y(e.at),J(e.percent),v(e.watts,`W`)])},strip:{label:`primary over second`,values:n.map(e=>e.percent),say:J},draw:e=>{let o=[100,...n.map(e=>e.percent),...r.flatMap(({low:e,high:t})=>[e,t])],s=[...n,...r].map(e=>e.at),c=t.view?.within??[Math.min(0,...s),Math.max(1,...s)],l=P([j.left,e-j.right],[j.title+6,210-j.axis],c,[Math.min(...o),Math.max(...o)],5),u=r.map(({at:e,high:t})=>[l.x(e),l.y(t)]),d=r.map(({at:e,low:t})=>[l.x(e),l.y(t)]).reverse();return M(t.id,[e,210],`Ratio of the meters through the ride`,a,[G(l,t.marked),K(t,`band`,l,[r.length>1?ue(`${D([...u,...d])}Z`,`band`):null]),V(l,e=>`${e} %`),z([l.left,l.y(100)],[l.right,l.y(100)],`quiet`),K(t,`lines`,l,[B(n.map(e=>[l.x(e.at),l.y(e.percent)]),2.5,`a`),L(D(r.map(({at:e,percent:t})=>[l.x(e),l.y(t)])),`ink`,2),...i.flatMap(e=>[z([l.x(e),l.y(100)-8],[l.x(e),l.y(100)+8],`ink`,2),I(y(e),[l.x(e)+4,l.y(100)+14],`ink`)])]),U(l,c),W(l,`Primary over second`,[{name:`block`,role:`a`,mark:`dot`},{name:`trend`,role:`ink`},{name:`95 % band`,role:`band`,mark:`area`}])])}}}function ge(e){return e.slice(1).flatMap((t,n)=>{let r=e[n],[i,a]=[r.percent-100,t.percent-100];return i*a<0?[r.at+(t.at-r.at)*i/(i-a)]:[]})}function _e(e,t){let{blocks:n}=e,r=n.map(e=>e.heartRate-e.predicted),i=`Heart rate as measured (dots) and as power predicts it (line), and below it the difference of the two, against time; ${n.length} blocks.`;return{title:`Heart rate, predicted and measured`,description:i,table:{head:[`time`,`mean power`,`heart rate`,`predicted`],rows:n.map(e=>[y(e.at),v(e.watts,`W`),v(e.heartRate,`bpm`),v(e.predicted,`bpm`)])},strip:{label:`heart rate, measured minus predicted`,values:r,say:e=>v(e,`bpm`)},draw:e=>{let a=n.map(e=>e.at),o=t.view?.within??[Math.min(0,...a),Math.max(1,...a)],s=[j.left,e-j.right],c=T(n.flatMap(e=>[e.heartRate,e.predicted]))??[0,1],l=T([0,...r])??[0,1],u=P(s,[j.title+6,150],o,c),d=P(s,[150+j.title+16,150+j.title+16+90],o,l,3);return M(t.id,[e,d.bottom+j.axis],`Heart rate, predicted and measured`,i,[G(u,t.marked),G(d,t.marked),V(u,g),K(t,`over`,u,[L(D(n.map(e=>[u.x(e.at),u.y(e.predicted)])),`b`,1.75),B(n.map(e=>[u.x(e.at),u.y(e.heartRate)]),2.5,`a`)]),W(u,`bpm`,[{name:`measured`,role:`a`,mark:`dot`},{name:`predicted from power`,role:`b`}]),V(d,g),z([d.left,d.y(0)],[d.right,d.y(0)],`quiet`),K(t,`under`,d,[L(D(n.map((e,t)=>[d.x(e.at),d.y(r[t])])),`a`,1.5)]),W(d,`Measured minus predicted, bpm`),U(d,o)])}}}function ve(e,t){let n=ye(e,t),r=t.view??{within:[0,e.primary.length],averaging:null};return{title:n.length>1?`Both meters through the ride`:`The ride, second by second`,description:Y(e,n.length>1),table:X(e,n),strip:Ce(n),draw:i=>{let a=0,o=[],s=null;for(let c of be(e,n,r)){let e=T(...c.curves.map(e=>e.values));if(e===null)continue;let n=P([j.left,i-j.right],[a+j.title+4,a+j.title+c.height],r.within,c.zero?[Math.min(0,e[0]),Math.max(0,e[1])]:e,c.height>90?4:2);o.push(...Se(c,n,t,r.within[0])),a+=j.title+c.height+10,s=n}return s!==null&&o.push(...U(s,r.within)),M(t.id,[i,a+j.axis],`The ride, second by second`,Y(e,n.length>1),o)}}}function ye(e,{meter:t}){return[{name:t(`primary`),power:e.primary},...e.seconds.map(({subject:e,power:n})=>({name:t(e),power:n}))]}function be(e,t,{within:n,averaging:r}){let i=e=>e.slice(n[0],n[1]),a=e=>i(r===null?e:k(e,r)),o=[{title:`Power, W`,height:150,zero:!0,curves:t.map(({name:e,power:t},n)=>({values:a(t),name:e,role:C(n),width:1.25})).reverse()}];t.length>1&&o.unshift(xe(e,t,{within:n,averaging:r}));let s=(e,t,n)=>({title:e,height:56,zero:n,curves:[{values:i(t),name:``,role:`quiet`,width:1,behind:!0}]});return e.cadence!==null&&o.push(s(`Cadence, rpm`,e.cadence,!0)),e.heartRate!==null&&o.push(s(`Heart rate, bpm`,e.heartRate,!1)),o}function xe(e,t,{within:n,averaging:r}){let i=t.slice(1),a=i.map(({power:t})=>O(e.primary,t)),o=e=>e.slice(n[0],n[1]),s=r===null&&n[1]-n[0]<=600,c=r??30,l=(e,t)=>({values:o(s?e:k(e,c)),name:[i.length>1?`minus ${i[t].name}`:``,s?`as recorded`:`${c} s mean`].filter(e=>e!==``).join(`, `),role:i.length>1?C(t+1):`ink`,width:1.5});return{title:`Primary minus second, W`,height:130,zero:!0,curves:[...s||r!==null?[]:a.map(e=>({values:o(e),name:``,role:`haze`,width:1,behind:!0})),...a.map(l)]}}function Se(e,t,n,r){let i=e.curves.filter(e=>e.behind!==!0).map(({name:e,role:t})=>({name:e,role:t})),a=e=>t.x(r+e);return[...G(t,n.marked),...V(t,g),e.zero&&t.ticksY[0]<0?z([t.left,t.y(0)],[t.right,t.y(0)],`quiet`):null,...e.curves.map(e=>L(ae(e.values,a,t.y),e.role,e.width)),...W(t,e.title,i.length>1||e.title.startsWith(`Primary`)?[...i].reverse():[])].filter(e=>e!==null)}function Y(e,t){return`${[t?`Difference of the meters, with its mean over 30 s in front`:null,`power`,e.cadence===null?null:`cadence`,e.heartRate===null?null:`heart rate`].filter(e=>e!==null).join(`, `)} against time, ${y(e.primary.length)} in all. Where several seconds share a pixel the lowest and the highest are drawn. Stretches that findings argue from are marked.`}function X(e,t){let n=e.primary.length,r=Math.max(60,Math.ceil(n/12/60)*60),i=[...t.map(({name:e,power:t})=>({head:`${e}, W`,values:t})),...e.cadence===null?[]:[{head:`cadence, rpm`,values:e.cadence}],...e.heartRate===null?[]:[{head:`heart rate, bpm`,values:e.heartRate}]],a=[];for(let e=0;e<n;e+=r){let t=Math.min(n,e+r);a.push([`${y(e)}–${y(t)}`,...i.map(({values:n})=>{let r=T(n.slice(e,t));return r===null?`–`:`${g(Math.round(r[0]))} to ${g(Math.round(r[1]))}`})])}return{head:[`time`,...i.map(({head:e})=>`${e}: lowest to highest`)],rows:a}}function Ce(e){let t=e[1],n=t===void 0?e[0].power:O(e[0].power,t.power);return{label:t===void 0?`power`:`primary minus second`,values:n,say:e=>`${g(Math.round(e))} W`}}function we(e,t){switch(e.kind){case`traces`:return ve(e,t);case`ratio`:return he(e,t);case`response`:return _e(e,t)}}function Z({scale:e,changes:t}){let n=0;return(t.match(/\\(-?\\d+\\)|[a-zA-Z0_]/g)??[]).map(t=>{if(t===`_`)return null;let r=t.charCodeAt(0);return t.length>1?n+=Number(t.slice(1,-1)):t!==`0`&&(n+=r>96?r-96:64-r),n/e})}function Te(e){if(e.kind!==`traces`)return e;let{primary:t,seconds:n,cadence:r,heartRate:i}=e;return{...e,primary:Z(t),seconds:n.map(({subject:e,power:t})=>({subject:e,power:Z(t)})),cadence:r===null?null:Z(r),heartRate:i===null?null:Z(i)}}function Ee(e,t,n){let r=(e,t)=>({name:e,unit:`W`,values:n===null?t:k(t,n)});return[r(t(`primary`),e.primary),...e.seconds.map(e=>r(t(e.subject),e.power)),...e.cadence===null?[]:[{name:`cadence`,unit:`rpm`,values:e.cadence}],...e.heartRate===null?[]:[{name:`heart rate`,unit:`bpm`,values:e.heartRate}]]}function De(e,t){return e.map(({name:e,unit:n,values:r})=>{let i=r[t]??null;return{name:e,value:i===null?null:v(i,n)}})}function Q([e,t],n){let r=Math.min(n,Math.max(10,Math.round(t-e))),i=Math.min(Math.max(0,Math.round((e+t-r)/2)),n-r);return[i,i+r]}function $([e,t],n,r,i){let a=r?1/2:2;return Q([n-(n-e)*a,n+(t-n)*a],i)}function Oe([e,t],n){let r=Math.max(15,(t-e)/2);return Q([e-r,t+r],n)}function ke([e,t],n,r){return n<e?Q([n,n+t-e],r):n>=t?Q([n+1-(t-e),n+1],r):[e,t]}function Ae(){let e=document.getElementById(`live-data`);if(e===null)return;let t=JSON.parse(e.textContent??``),n=t.charts.flatMap(({figure:e,marked:t,chart:n})=>{let r=document.querySelector(`#${e} .live`);return r===null?[]:[{host:r,id:`${e}-l`,marked:t,chart:Te(n)}]}),r=n.find(e=>e.chart.kind===`traces`);r!==void 0&&new je(t,n,r,r.chart)}var je=class{data;drawn;ride;chart;length;tools;output;averagedButton;within;averaging=null;channels;at=null;dragFrom=null;constructor(e,t,n,r){this.data=e,this.drawn=t,this.ride=n,this.chart=r,this.length=r.primary.length,this.within=[0,this.length],this.channels=this.readChannels(),this.tools=n.host.parentElement.querySelector(`.tools`),this.output=this.tools.querySelector(`output`),this.averagedButton=this.tools.querySelector(`[data-do=\"averaged\"]`),this.tools.hidden=!1;for(let{host:e}of t){e.hidden=!1;for(let t of e.parentElement.querySelectorAll(`.wide, .narrow`))t.hidden=!0}this.listen();let i=new ResizeObserver(()=>this.draw());for(let{host:e}of t)i.observe(e)}meter=e=>this.data.meters[e]??e;readChannels(){return Ee(this.chart,e=>this.meter(e),this.averaging)}listen(){let{host:e}=this.ride;this.tools.addEventListener(`click`,e=>this.press(e)),e.addEventListener(`keydown`,e=>this.key(e)),e.addEventListener(`pointerdown`,e=>this.down(e)),e.addEventListener(`pointermove`,e=>this.move(e)),e.addEventListener(`pointerup`,e=>this.up(e)),e.addEventListener(`pointercancel`,()=>this.drop()),e.addEventListener(`pointerleave`,()=>this.point(null)),e.addEventListener(`dblclick`,()=>this.show([0,this.length])),document.addEventListener(`click`,e=>this.follow(e))}follow(e){let t=e.target.closest(`a[data-from]`);t!==null&&(e.preventDefault(),this.show(Oe([Number(t.dataset.from),Number(t.dataset.to)],this.length)),this.ride.host.focus({preventScroll:!0}),this.ride.host.parentElement.scrollIntoView({block:`start`}))}press(e){let t=e.target.closest(`[data-do]`)?.dataset.do,n=this.at??(this.within[0]+this.within[1])/2;(t===`in`||t===`out`)&&this.show($(this.within,n,t===`in`,this.length)),t===`whole`&&this.show([0,this.length]),t===`averaged`&&this.average(this.averaging===null?this.data.averaging:null)}key(e){let t=this.at??this.within[0],n=e.shiftKey?10:1,r={ArrowLeft:this.at===null?t:t-n,ArrowRight:this.at===null?t:t+n,Home:this.within[0],End:this.within[1]-1}[e.key];if(r!==void 0)this.read(Math.min(this.length-1,Math.max(0,r)));else if(e.key===`+`||e.key===`=`)this.show($(this.within,t,!0,this.length));else if(e.key===`-`)this.show($(this.within,t,!1,this.length));else if(e.key===`0`||e.key===`Escape`)this.show([0,this.length]);else return;e.preventDefault()}read(e){let t=ke(this.within,e,this.length);t[0]!==this.within[0]&&this.show(t),this.point(e)}down(e){e.button===0&&e.pointerType!==`touch`&&(this.dragFrom=this.second(e),this.ride.host.setPointerCapture(e.pointerId))}move(e){this.point(this.second(e))}up(e){let t=this.dragFrom;if(this.drop(),t===null)return;let n=this.second(e);Math.abs(this.x(t)-this.x(n))>6&&this.show(Q([Math.min(t,n),Math.max(t,n)],this.length))}drop(){this.dragFrom=null,this.overlay()}show(e){this.within=Q(e,this.length),this.draw(),this.output.textContent=q.showing(this.within)}average(e){this.averaging=e,this.averagedButton.setAttribute(`aria-pressed`,String(e!==null)),this.channels=this.readChannels(),this.draw()}point(e){this.at=e,this.overlay(),this.output.textContent=e===null?q.hint:me(e,De(this.channels,e))}draw(){let{within:e,averaging:t}=this,n={within:e,averaging:t};for(let{host:e,id:t,marked:r,chart:i}of this.drawn){let a=we(i,{id:t,marked:r,meter:this.meter,view:n}).draw(Math.max(280,e.clientWidth)),o=new DOMParser().parseFromString(a.toString(),`image/svg+xml`).documentElement;e.replaceChildren(document.importNode(o,!0))}this.overlay()}overlay(){for(let{host:e}of this.drawn){let t=e.querySelector(`svg`);for(let e of t.querySelectorAll(`.cursor`))e.remove();if(this.at===null||this.at<this.within[0]||this.at>this.within[1])continue;let n=this.x(this.at,e);if(this.dragFrom!==null&&e===this.ride.host){let r=this.x(this.dragFrom,e);t.append(this.mark(`rect`,{x:Math.min(n,r),y:0,width:Math.abs(n-r),height:t.viewBox.baseVal.height}))}t.append(this.mark(`line`,{x1:n,x2:n,y1:j.title,y2:t.viewBox.baseVal.height-j.axis}))}}mark(e,t){let n=document.createElementNS(`http://www.w3.org/2000/svg`,e);n.setAttribute(`class`,`cursor`);for(let[e,r]of Object.entries(t))n.setAttribute(e,String(r));return n}x(e,t=this.ride.host){let[n,r]=this.within,i=Math.max(280,t.clientWidth)-j.left-j.right;return j.left+(e-n)/(r-n)*i}second(e){let{host:t}=this.ride,[n,r]=this.within,i=t.clientWidth-j.left-j.right,a=(e.clientX-t.getBoundingClientRect().left-j.left)/i;return Math.min(r-1,Math.max(n,Math.round(n+a*(r-n))))}};Ae()})();";
// src/report/page/style.ts
/** Colours by which the dark style replaces those that a drawing carries itself. */
const darkDrawing = Object.entries(palette).map(([role, [, dark]]) => `.s-${role}{stroke:${dark}}.f-${role}{fill:${dark}}`).join("");
const variables = (which) => Object.entries(palette).map(([role, pair]) => `--${role}:${pair[which]}`).join(";");
/**
* The page's look: a margin column holds the headings, which stay in sight while their section passes; the
* main column holds what is said. Levels are told apart by words and by the weight of the line above them,
* never by colour alone. The main column is as wide as a drawing, 760 px.
*/
const style = `
:root{${variables(0)};--serif:Charter,"Bitstream Charter","Sitka Text",Cambria,"Noto Serif",Georgia,serif;--sans:system-ui,-apple-system,"Segoe UI","Noto Sans",Roboto,sans-serif;--mono:ui-monospace,"SFMono-Regular",Menlo,Consolas,"Noto Sans Mono",monospace;color-scheme:light dark}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.55 var(--serif);font-variant-numeric:lining-nums tabular-nums}
main{max-width:66.5rem;margin:0 auto;padding:2rem 1rem 4rem}
h1,h2,h3,h4,p,ul,ol,dl,figure,table{margin:0}
h1{font-size:clamp(2rem,1.3rem + 3vw,3rem);line-height:1.08;font-weight:600;letter-spacing:-.015em;text-wrap:balance}
h2{font-size:1.3rem;line-height:1.2;font-weight:600;letter-spacing:-.005em;text-wrap:balance}
h3{font-size:1.4rem;line-height:1.25;font-weight:600;letter-spacing:-.005em}
h4,.eyebrow,dt,caption,th,figcaption,summary{font-family:var(--sans);font-size:.8125rem;line-height:1.45;font-weight:600;color:var(--quiet)}
p,li,dd{max-width:41rem;text-wrap:pretty;overflow-wrap:anywhere}
ul,ol{padding-left:1.15rem}
li+li{margin-top:.35rem}
a{color:inherit;text-decoration-color:var(--quiet);text-underline-offset:.18em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:2px solid var(--a);outline-offset:3px}
:target{scroll-margin-top:1rem}
q{quotes:none;font-style:italic}
.lead{font-size:1.2rem;line-height:1.45}
.quiet{color:var(--quiet)}
.fine-print{font-family:var(--sans);font-size:.8125rem;line-height:1.5;color:var(--quiet)}
.flow>*+*{margin-top:1rem}
.row{display:grid;grid-template-columns:minmax(0,1fr);gap:1rem 2.5rem;border-top:1px solid var(--ink);padding-top:.85rem;margin-top:3rem}
.row>*{min-width:0}
.row.refer{border-top:7px double var(--ink)}
.row.query{border-top-width:3px}
.mast{border-top-width:7px;margin-top:0;padding-top:1.2rem}
.mast h1{margin-top:-.2rem}
.rests{list-style:none;padding:0;margin-top:.4rem}
.rests li{padding:.55rem 0;border-top:1px solid var(--rule);margin:0;max-width:none;display:grid;grid-template-columns:minmax(0,1fr) auto;gap:0 1.5rem}
.rests li:last-child{border-bottom:1px solid var(--rule)}
.rests p{grid-column:1/-1;color:var(--quiet);font-size:.9375rem;line-height:1.45}
.cautions ul{list-style:none;padding:.1rem 0 .1rem 1.1rem;border-left:3px solid var(--ink)}
.finding+.finding{margin-top:3rem;border-top:1px solid var(--rule);padding-top:1.1rem}
.finding>*+*{margin-top:1rem}
.finding .eyebrow+h3{margin-top:.1rem}
.finding .eyebrow code{font-weight:400;margin-left:.6em}
.claim{font-size:1.2rem;line-height:1.45}
.sides{display:grid;gap:1.2rem 2.5rem;margin-top:1.6rem}
.sides ul,.sides+dl{margin-top:.35rem}
.finding .sides+dl{margin-top:1.4rem}
figure{max-width:47.5rem;margin-top:1.7rem}
.row>div>figure:first-child{margin-top:.2rem}
figure>figcaption{margin-bottom:.4rem;color:var(--ink)}
.chart{display:block;width:100%;height:auto;overflow:visible}
figure .fine-print{margin-top:.4rem;max-width:44rem}
.narrow,[hidden]{display:none!important}
.tools{display:flex;flex-wrap:wrap;gap:.4rem;align-items:center;margin-bottom:.7rem;font-family:var(--sans);font-size:.8125rem}
button{font:inherit;color:var(--ink);background:none;border:1px solid var(--quiet);border-radius:2px;padding:.3rem .7rem;cursor:pointer;min-height:2rem}
button:hover{border-color:var(--ink)}
button[aria-pressed=true]{background:var(--ink);color:var(--paper);border-color:var(--ink)}
output{flex-basis:100%;min-height:2.9em;color:var(--quiet)}
.live{touch-action:pan-y;user-select:none;cursor:crosshair}
.cursor{stroke:var(--ink);stroke-width:1;pointer-events:none}
rect.cursor{fill:var(--mark);fill-opacity:.6;stroke:none}
dl{display:grid;gap:.5rem}
dl>div{display:grid;grid-template-columns:minmax(0,1fr)}
dd{margin:0}
dt{padding-top:.2rem}
.checks dl{gap:0}.checks dl>div{padding:.5rem 0;border-top:1px solid var(--rule)}.checks dl>div:first-child{border-top:0;padding-top:0}.checks dt{padding-top:.15rem}
.mast dl{gap:.65rem}
.mast dd{font-size:.9375rem;line-height:1.4}
.part+.part{margin-top:2.2rem}
.part>*+*{margin-top:.7rem}
.part h3{font-size:1.15rem}
.scroll{overflow-x:auto;margin-top:.5rem}
table{border-collapse:collapse;font-size:.9375rem;line-height:1.4;width:100%}
caption{text-align:left;padding-bottom:.3rem}
th,td{text-align:left;vertical-align:top;padding:.45rem 1.2rem .45rem 0;border-top:1px solid var(--rule)}
thead th{border-top:0;vertical-align:bottom;white-space:nowrap}
tbody th{font:inherit;color:inherit}
tbody tr:last-child>*{border-bottom:1px solid var(--rule)}
.numbers td,.numbers th{white-space:nowrap}
details{margin-top:.6rem}
summary{cursor:pointer;width:fit-content}
code{font-family:var(--mono);font-size:.8125rem;overflow-wrap:anywhere}
pre{margin:.5rem 0 0;padding:.7rem .9rem;background:var(--band);white-space:pre-wrap;overflow-wrap:anywhere}
@media screen and (min-width:60rem){main{padding-inline:2rem}.row{grid-template-columns:12rem minmax(0,47.5rem)}.row>h2{position:sticky;top:1rem;align-self:start}.sides{grid-template-columns:1fr 1fr}.row>:not(.facts) dl>div{grid-template-columns:13rem minmax(0,1fr);gap:0 1.5rem}.mast>.facts{order:-1}}
@media screen and (max-width:30rem){.rests li{grid-template-columns:minmax(0,1fr)}}
@media screen and (max-width:44rem){.wide{display:none}.narrow:not([hidden]){display:block!important}.row{margin-top:2.4rem}}
@media screen and (prefers-color-scheme:dark){:root{${variables(1)}}${darkDrawing}}
@media print{.tools{display:none}.f-paper{fill:none}.numbers td,.numbers th{white-space:normal}:root{color-scheme:light}body{font-size:9.5pt}main{max-width:none;padding:0}.row{margin-top:1.6rem}figure,tr,li,dl>div{break-inside:avoid}h1,h2,h3,h4,figcaption,.eyebrow{break-after:avoid}.scroll{overflow:visible}figure details:not([open]){display:none}details::details-content{content-visibility:visible;display:block}summary{list-style:none}a{text-decoration:none}.sides{grid-template-columns:1fr 1fr}dl>div{grid-template-columns:11rem minmax(0,1fr);gap:0 1.5rem}@page{margin:16mm 15mm}}
`;
// src/report/page/shell.ts
/** What a content policy calls a text by. */
async function policyHash(text) {
	const bytes = (await sha256(new TextEncoder().encode(text))).match(/../g).map((pair) => Number.parseInt(pair, 16));
	return `'sha256-${btoa(String.fromCharCode(...bytes))}'`;
}
/**
* The whole document. Its policy lets in nothing but this one style and this one script, known by their
* hashes: no network, no other script, no frame, no form. The fixed text here, the style and the script are
* the only strings that are not escaped.
*/
async function shell(title, body) {
	return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${`default-src 'none'; style-src ${await policyHash(style)}; script-src ${await policyHash(script)}; base-uri 'none'; form-action 'none'`}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
${html`<title>${title}</title>`}
<style>${style}</style>
</head>
<body>
${body}
<script>${script}<\/script>
</body>
</html>
`;
}
// src/report/words/story.ts
/** What was wrong with a file, and what reading did about it. */
const defects = {
	truncated: "The file ends early: {kept|record was|records were} kept, {lostBytes|byte was|bytes were} lost.",
	"checksum-wrong": "The file’s stored checksum does not match its content. It was read all the same.",
	"never-closed": "The recorder never closed the file: {kept|record was|records were} recovered from it.",
	chained: "The file holds {parts|recording|recordings} one behind another; they were read as one.",
	"several-sessions": "The file holds {sessions|session|sessions}; they were read as one ride.",
	"colliding-field": "An added field bears the name of a standard one ({name}); the standard value was kept.",
	"odd-power-type": "Power is stored in an unusual type ({type}).",
	"markup-ends-early": "The file stops or breaks in the middle, at line {line}; what came before was read.",
	"unreadable-values": "{count|cell|cells} of column {column} hold no number and count as missing.",
	"trailing-bytes": "{bytes|byte|bytes} behind the recording belong to none and were left aside.",
	"power-in-developer-field": "There is no standard power; the added field {name} stands in for it.",
	"zone-assumed": "The clock times state no time zone; they were taken as UTC.",
	"no-clock": "The file counts time from its own start: it says nothing of the date.",
	"unit-assumed": "Column {column} states no unit; {unit} was assumed."
};
/** What was done to the data, in order. */
const steps$1 = {
	read: "Read as {format}: {records|record|records}.",
	"doubled-seconds": "{count|second|seconds} held several records; their values were averaged.",
	"backward-steps": "{count|record|records} put back in order of time.",
	"far-records-dropped": "{count|record|records} far from the body of the ride left out.",
	gaps: "Missing in all: {missing:s}; the longest gap {longest:s}. Gaps stay empty.",
	pauses: "Pauses: {count}, together {seconds:s}.",
	bridged: "{seconds:s} between records of an irregular recorder carried over, at most {longest:s} at once.",
	aligned: "Put on the primary’s clock: {offset:s} added, in {segments|segment|segments}.",
	"extra-meter": "A further meter found inside the file: {name}.",
	"window-given": "Race window as given: from {from:at} to {to:at} of the ride.",
	"window-proposed": "No race window was given; proposed from the ride itself: from {from:at} to {to:at}."
};
const alignments = {
	"power-agrees": "the power of both fits at one offset and at no other",
	"clock-chose": "the power fits at several offsets; the clocks of the files chose one of them",
	"channel-chose": "the power fits at several offsets; cadence or heart rate chose one of them",
	"no-overlap": "the two recordings do not overlap in time",
	"too-short": "too little of the ride was recorded by both",
	"nothing-fits": "at no offset do the two agree better than chance would let them",
	"several-lags-fit": "regular efforts make several offsets look equally good",
	"same-recorder": "both meters are in one file, on one clock",
	"no-power": "the second recording holds no power"
};
const origins = {
	independent: "a measurement of its own",
	"same sensor": "the same sensor on two recorders: no second opinion",
	derived: "computed from the primary",
	unknown: "cannot be told"
};
const leftOut = {
	"other sport": "of another sport",
	"no power": "without power",
	unreadable: "unreadable",
	duplicate: "twice there",
	flawed: "flawed",
	"too short": "too short"
};
function defectSaid(defect) {
	return fill(defects[defect.id], defect.values);
}
/** Faults of a file that a reader must know before the grade: part of the ride may be missing or wrong. */
const damages = /* @__PURE__ */ new Set([
	"truncated",
	"checksum-wrong",
	"never-closed",
	"markup-ends-early"
]);
/** What is damaged among the files, in one line; null when nothing is. */
function damageSaid(report) {
	const { primary, seconds } = report.submission;
	const found = [primary, ...seconds].flatMap((one) => one.defects.filter(({ id }) => damages.has(id)).map((defect) => `${plain$1(capital([recordingName(report, one)]))}, damaged: ${plain$1(defectSaid(defect))}`));
	return found.length === 0 ? null : found.join(" ");
}
function stepSaid(step) {
	if (step.id === "aligned" && step.values.offset === "") return ["Not put on the primary’s clock: no offset fits."];
	return fill(steps$1[step.id], step.values);
}
function alignmentSaid(alignment) {
	return `${alignment.secure ? "Secure" : "Not secure"}: ${alignments[alignment.reason]}.`;
}
/** The evidence for an alignment, one fact a line: what it is, and its number. */
function alignmentFacts(alignment) {
	const facts = [];
	const { offset, driftPpm } = alignment;
	if (offset !== null) facts.push(["Clock offset", `${quantity(offset.value, "s")} (${figure$1(offset.low, "s")} to ${quantity(offset.high, "s")})`]);
	if (alignment.zoneSlip !== 0) facts.push(["Of this a slip of whole and quarter hours (time zone)", duration(alignment.zoneSlip)]);
	if (driftPpm !== null) facts.push(["Clocks run apart by", `${number$2(driftPpm.value)} parts in a million (${number$2(driftPpm.low)} to ${number$2(driftPpm.high)})`]);
	if (alignment.segments.length > 1) facts.push(["Stretches with a clock of their own", String(alignment.segments.length)]);
	facts.push(["Recorded by both", quantity(alignment.coverage, "share")]);
	facts.push(["Agreement of fast changes at this offset", figure$1(alignment.peak, "r")]);
	facts.push(["Highest agreement that chance reaches", figure$1(alignment.surrogatePeak, "r")]);
	facts.push(["Lead over every other offset (log-likelihood)", number$2(alignment.margin)]);
	facts.push(["Where the second’s power comes from", origins[alignment.origin]]);
	if (alignment.originEvidence !== null) {
		const { left, gain, dynamics } = alignment.originEvidence;
		facts.push(["Its fast detail that the primary does not explain", quantity(left, "share")]);
		facts.push(["Its gain over the primary", figure$1(gain, "ratio")]);
		facts.push(["Misfit where power moves fast, over that where it hardly moves", number$2(dynamics)]);
	}
	facts.push(["Agreement second by second", figure$1(alignment.correlation, "r")]);
	for (const { channel, lag, correlation } of alignment.byChannel) facts.push([`Remaining lag of ${channelNames[channel]}`, `${quantity(lag, "s")} (agreement ${figure$1(correlation, "r")})`]);
	return facts;
}
function leftOutSaid(counts) {
	return Object.entries(counts).map(([why, count]) => `${number$2(count)} ${Object.hasOwn(leftOut, why) ? leftOut[why] : "for another reason"}`).join(", ");
}
// src/report/page/story.ts
/** Where the data came from, how it was put together, and everything that was done to it. */
function dataStory(layout) {
	const { report, place } = layout;
	const { primary, seconds, unreadable } = report.submission;
	return section("story", "The data’s own story", [
		...report.charts.filter((chart) => !isWholeRide(chart) && !place.has(chart.id)).map((chart) => figure(layout, chart)),
		...[primary, ...seconds].map((one) => recording(report, one)),
		...unreadable.map(({ name, why }) => part("Unreadable second recording", html`<p>${said$1([
			foreign(name),
			": ",
			foreign(why)
		])}</p>`)),
		history(report),
		sections(report),
		steps(report)
	]);
}
function recording(report, one) {
	const { declared } = one;
	const alignment = report.alignment.find(({ subject }) => subject === one.subject);
	const facts = terms([
		["File", said$1([foreign(one.name), `, ${formatNames[one.format]}`])],
		["Device", said$1(deviceSaid(one.device))],
		["Declared as", declared === null ? "not declared" : declaredSaid(declared)],
		["Sport", one.sport === null ? "not stated" : said$1([foreign(one.sport)])],
		["Where", one.indoors === null ? "not stated" : one.indoors ? "indoors" : "outdoors"],
		["Begins", clock(one.start)],
		["Lasts", `${duration(one.seconds)}; recorded in ${quantity(recordedShare(one), "share")} of the seconds`],
		["Power", powerSaid(one)],
		["Channels", one.channels.map((channel) => channelNames[channel]).join(", ")],
		["What was wrong with the file", one.defects.length === 0 ? null : bullets(one.defects.map((defect) => said$1(defectSaid(defect))))]
	]);
	const placed = alignment !== void 0 && html`<h4>How it was put on the primary’s clock</h4><p>${alignmentSaid(alignment)}</p>${terms(alignmentFacts(alignment))}`;
	return part(plain$1(capital([recordingName(report, one)])), html`${facts}${placed}`);
}
function declaredSaid({ place, sides, tolerancePercent }) {
	return `${placeNames[place]}, ${sides === 1 ? "one side" : "both sides"}, ±${quantity(tolerancePercent, "%")}`;
}
function recordedShare({ recordedSeconds, seconds }) {
	return recordedSeconds / Math.max(1, seconds);
}
function powerSaid({ meanPower, maxPower }) {
	if (meanPower === null) return "none";
	const highest = maxPower === null ? "" : `, highest ${quantity(maxPower, "W")}`;
	return `mean ${quantity(meanPower, "W")}${highest}`;
}
function history({ submission: { history } }) {
	if (history === null) return null;
	const { rides, notBefore, leftOut } = history;
	return part("Earlier rides", html`<p>${counted(rides, "ride")} used. ${notBefore > 0 && `${counted(notBefore, "ride")} not used: no earlier than this one. `}${Object.keys(leftOut).length > 0 && `Left out while they were gathered: ${leftOutSaid(leftOut)}.`}</p>`);
}
/** More sections than these are counted; all of them stand in the JSON. */
const mostSections = 60;
/** Where the meters agree and where not: every section with its power and the differences in it. */
function sections(report) {
	const { sections: all } = report;
	if (all.length === 0) return null;
	const counts = [...new Set(all.map((section) => section.kind))].map((kind) => {
		const [one, many] = sectionNames[kind];
		return counted(all.filter((section) => section.kind === kind).length, one, many);
	});
	const meters = [...new Set(all.flatMap(({ differences }) => differences.map(({ subject }) => subject)))];
	const shown = table(all.length > mostSections ? `The first ${mostSections} sections` : "Sections", [
		"section",
		"when",
		"mean power",
		"time to rise",
		...meters.map((subject) => subjectName(report, subject))
	], all.slice(0, mostSections).map((section) => [
		sectionNames[section.kind][0],
		span(section.stretch),
		section.watts === null ? "–" : quantity(section.watts, "W"),
		section.rise === null ? "" : quantity(section.rise, "s"),
		...meters.map((subject) => differenceSaid(section, subject))
	]), "numbers");
	return part("Sections found in the ride", html`<p>${plain$1(capital(list$3(counts)))}.</p><details><summary>Each section</summary>${shown}</details>`);
}
function differenceSaid({ differences }, meter) {
	const found = differences.find(({ subject }) => subject === meter);
	if (found === void 0) return "";
	const { percent, low, high } = found;
	const between = low === null || high === null ? null : range([low, high], "%");
	return between === null ? quantity(percent, "%") : `${quantity(percent, "%")} (${between})`;
}
function steps(report) {
	if (report.steps.length === 0) return null;
	return part("What was done to the data, in order", html`<ol>${report.steps.map((step) => html`<li>${said$1(stepSaid(step))} <span class="quiet">(${subjectName(report, step.subject)})</span></li>`)}</ol>`);
}
// src/report/words/cautions.ts
/** How to read any report; said before the findings, in every form. */
const always = [
	"A flag is a question, not a verdict. Each one lists its innocent explanations; most flags have one.",
	"How often honest riders show such a value does not say how likely this rider is honest.",
	"People decide, under the organiser’s own rules, and the rider has the right to answer."
];
const withSecond = "Two meters that disagree cannot say which of them is off, and two that agree can be wrong together.";
const withoutSecond = "Without a second recording, nothing here says whether the meter reads right, only whether its recording behaves like a measurement.";
const health = "Heart rate and body mass are health data: keep this report among those who decide, or share a redacted one.";
const redacted = "This report is redacted: names are codes; heart rate, body mass and what would give them away are left out.";
function cautions(report) {
	const { seconds } = report.submission;
	return [
		always[0],
		seconds.length > 0 ? withSecond : withoutSecond,
		...always.slice(1),
		report.settings.redacted ? redacted : health
	];
}
// src/report/page/top.ts
/** The grade in words, its reach, what it rests on, and in the margin which submission it is about. */
function mast({ report, told: { rests } }) {
	return html`<header class="row mast"><div class="flow"><h1>${gradeWord(report.grade)}. ${gradeMeans(report.grade)}</h1><p class="lead">${reachSaid(report)}</p>${[
		damageSaid(report),
		missingSaid(report),
		becauseSaid(report)
	].map((text) => text !== null && html`<p>${text}</p>`)}${rests.length > 0 && html`<div><p class="eyebrow">What the grade rests on</p><ol class="rests">${rests.map(basis)}</ol></div>`}</div><div class="facts">${facts(report)}</div></header>`;
}
function basis(told) {
	return html`<li><a href="#${findingId(told.number)}">${told.title}</a><span>${told.value}</span><p>${said$1(told.claim)}</p></li>`;
}
function facts(report) {
	const { primary, seconds, window, history } = report.submission;
	return terms([
		["Audit of a submission", `${report.tool.name} ${report.tool.version}`],
		...[primary, ...seconds].map((one) => [plain$1(capital([recordingName(report, one)])), said$1([foreign(one.name)])]),
		["Ridden", `${clock(primary.start)}, ${duration(primary.seconds)}`],
		["Race", `${span(window.stretch)} of the ride, ${window.given ? "as given" : "proposed from the ride itself"}`],
		["Earlier rides", history === null ? "none handed in" : counted(history.rides, "ride")]
	]);
}
function cautionsAndNext({ report, told: { next } }) {
	const steps = next.map(({ whats, settles }) => {
		const links = settles.map((told, index) => html`${index > 0 && "; "}<a href="#${findingId(told.number)}">${told.title}</a>`);
		return html`<div><dt>${links.length === 0 ? "Required by the event" : html`To settle: ${links}`}</dt><dd>${bullets(whats)}</dd></div>`;
	});
	return html`${section("cautions", "Before you read on", bullets(cautions(report)), "cautions")}${steps.length > 0 && section("next", "What to do next", html`<dl>${steps}</dl>`)}`;
}
// src/report/page/workings.ts
/** For whoever wants to redo the sums: every rule, every option, every result. */
function workings(report) {
	return section("workings", "How each number was worked out", report.rules.items.map((rule) => ruleOf(report, rule)));
}
function ruleOf(report, rule) {
	const results = report.measurements.filter((one) => one.rule === rule.id);
	return html`<details><summary>${rule.title} <code>${rule.id}</code></summary><div class="flow">${terms([
		["Asks", rule.question],
		["Measure", html`<code>${rule.measure}</code>`],
		["Needs", rule.needs.join(", ")],
		["Limits", limits$36(rule)],
		["Highest level", rule.highest],
		["Lowered when", rule.ceilings.map((one) => one.why).join(" ")],
		["Where the limits come from", sourceSaid(rule)],
		["False alarms", falseAlarmSaid(rule)],
		["Measured with", rule.source.kind === "measured" ? html`<code>${rule.source.command}</code>` : null],
		["Switched off", rule.off ?? null],
		["Options", results.length === 0 ? null : options$37(results[0].options)],
		...results.map((one) => [`Result, ${subjectName(report, one.subject)}`, resultSaid(one)])
	])}</div></details>`;
}
/** The number, its interval and how many pieces it rests on; or why there is none. */
function resultSaid(one) {
	const { count, interval, unit } = one;
	if (one.value === null || unit === null) return result(one);
	const between = interval === null ? null : range(interval, unit) ?? "exact";
	return [result(one), ` (${[between, count === null ? null : `rests on ${number$2(count)}`].filter((part) => part !== null).join("; ")})`];
}
function limits$36({ limits }) {
	return [
		"note",
		"query",
		"refer"
	].flatMap((level) => {
		const one = limits[level];
		if (one === void 0) return [];
		const sides = ["at least", "at most"].flatMap((side) => one[side] === void 0 ? [] : [`${side} ${number$2(one[side])}`]);
		return [`${levelWords[level]}: ${sides.join(" or ")}, of the ${one.of}, by the ${one.end === "cautious" ? "cautious end of the interval" : "estimate itself"}`];
	}).join("; ");
}
function result(one) {
	if (one.value !== null && one.unit !== null) return quantity(one.value, one.unit);
	return one.reason === null ? "withheld" : said$1(reasonInFull(one.reason));
}
function options$37(all) {
	return Object.entries(all).map(([name, value]) => `${name} = ${typeof value === "number" ? number$2(value) : value.map(number$2).join(", ")}`).join("; ");
}
/** What is needed to run the same audit again. */
function checksums(report) {
	const { inputs, rules, tool } = report;
	const files = table("Files used", [
		"role",
		"name",
		"checksum (SHA-256)"
	], inputs.map((input) => [
		input.role,
		said$1([foreign(input.name)]),
		html`<code>${input.sha256}</code>`
	]));
	const overlaid = rules.overlaid.map(({ file, text }) => html`<details><summary>${said$1([foreign(file)])}</summary><pre><code>${text}</code></pre></details>`);
	return section("checksums", "Checksums, to run it again", html`<p>${tool.name} ${tool.version}; ${said$1([foreign(rules.name)])}, checksum <code>${rules.sha256}</code>.</p>${files}${overlaid.length > 0 && html`<h3>Rules of this event that differ from the shipped ones</h3>${overlaid}`}`);
}
// src/report/html.ts
/** The report as one page that needs nothing else: no network, and for all that it says no script. */
async function renderHtml(report) {
	const layout = layOut(report);
	const body = html`<main>${mast(layout)}${cautionsAndNext(layout)}${overview(layout)}${raisedFindings(layout)}${fineFindings(layout)}${uncheckedMeasures(layout)}${dataStory(layout)}${workings(report)}${checksums(report)}</main>${liveData(layout)}`;
	return shell(`${gradeWord(report.grade)}: ${foreignText(report.submission.primary.name)}`, body);
}
// src/report/report.schema.json
var report_schema_default = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	title: "Audit report",
	description: "The graded report on one submission. Everything that is shown of it in any form stands here.",
	type: "object",
	properties: {
		"schemaVersion": { "const": 1 },
		"tool": {
			"type": "object",
			"properties": {
				"name": { "type": "string" },
				"version": { "type": "string" }
			},
			"required": ["name", "version"],
			"additionalProperties": false
		},
		"inputs": {
			"description": "Every file used.",
			"type": "array",
			"items": {
				"type": "object",
				"properties": {
					"role": { "type": "string" },
					"name": { "type": "string" },
					"sha256": { "$ref": "#/$defs/sha256" }
				},
				"required": [
					"role",
					"name",
					"sha256"
				],
				"additionalProperties": false
			}
		},
		"settings": {
			"type": "object",
			"properties": {
				"rider": { "$ref": "#/$defs/riderFacts" },
				"race": { "$ref": "#/$defs/raceFacts" },
				"redacted": { "type": "boolean" }
			},
			"required": [
				"rider",
				"race",
				"redacted"
			],
			"additionalProperties": false
		},
		"rules": {
			"type": "object",
			"properties": {
				"name": { "type": "string" },
				"sha256": { "$ref": "#/$defs/sha256" },
				"overlaid": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"file": { "type": "string" },
							"text": { "type": "string" }
						},
						"required": ["file", "text"],
						"additionalProperties": false
					}
				},
				"items": {
					"type": "array",
					"items": { "$ref": "#/$defs/rule" }
				}
			},
			"required": [
				"name",
				"sha256",
				"overlaid",
				"items"
			],
			"additionalProperties": false
		},
		"submission": {
			"type": "object",
			"properties": {
				"primary": { "$ref": "#/$defs/recording" },
				"seconds": {
					"type": "array",
					"items": { "$ref": "#/$defs/recording" }
				},
				"unreadable": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"name": { "type": "string" },
							"why": { "type": "string" }
						},
						"required": ["name", "why"],
						"additionalProperties": false
					}
				},
				"window": {
					"type": "object",
					"properties": {
						"stretch": { "$ref": "#/$defs/stretch" },
						"given": { "type": "boolean" }
					},
					"required": ["stretch", "given"],
					"additionalProperties": false
				},
				"history": { "oneOf": [{
					"type": "object",
					"properties": {
						"rides": {
							"type": "integer",
							"minimum": 0
						},
						"notBefore": {
							"type": "integer",
							"minimum": 0
						},
						"leftOut": {
							"type": "object",
							"additionalProperties": {
								"type": "integer",
								"minimum": 0
							}
						}
					},
					"required": [
						"rides",
						"notBefore",
						"leftOut"
					],
					"additionalProperties": false
				}, { "type": "null" }] }
			},
			"required": [
				"primary",
				"seconds",
				"unreadable",
				"window",
				"history"
			],
			"additionalProperties": false
		},
		"grade": { "enum": [
			"clear",
			"query",
			"refer",
			"incomplete"
		] },
		"reach": {
			"type": "object",
			"properties": {
				"judged": {
					"type": "integer",
					"minimum": 0
				},
				"notApplicable": {
					"type": "integer",
					"minimum": 0
				},
				"failed": {
					"type": "integer",
					"minimum": 0
				},
				"because": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"id": { "$ref": "#/$defs/reasonId" },
							"count": {
								"type": "integer",
								"minimum": 0
							}
						},
						"required": ["id", "count"],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"judged",
				"notApplicable",
				"failed",
				"because"
			],
			"additionalProperties": false
		},
		"missing": {
			"type": "array",
			"items": { "$ref": "#/$defs/requirement" }
		},
		"findings": {
			"type": "array",
			"items": { "$ref": "#/$defs/finding" }
		},
		"measurements": {
			"type": "array",
			"items": { "$ref": "#/$defs/measurement" }
		},
		"sections": {
			"type": "array",
			"items": { "$ref": "#/$defs/section" }
		},
		"alignment": {
			"type": "array",
			"items": { "$ref": "#/$defs/alignment" }
		},
		"steps": {
			"type": "array",
			"items": { "$ref": "#/$defs/step" }
		},
		"charts": {
			"type": "array",
			"items": { "$ref": "#/$defs/chart" }
		}
	},
	required: [
		"schemaVersion",
		"tool",
		"inputs",
		"settings",
		"rules",
		"submission",
		"grade",
		"reach",
		"missing",
		"findings",
		"measurements",
		"sections",
		"alignment",
		"steps",
		"charts"
	],
	additionalProperties: false,
	$defs: {
		"sha256": {
			"description": "Checksum of a file’s bytes as handed in.",
			"type": "string",
			"pattern": "^[0-9a-f]{64}$"
		},
		"subject": {
			"description": "What a statement is about; the code is the start of the second recording’s checksum, and absent where there is none.",
			"type": "string",
			"pattern": "^(primary|rider|submission|pair|(second|pair):[0-9A-Za-z._-]+)$"
		},
		"stretch": {
			"description": "Half open [from, to): seconds from the start of the primary’s series.",
			"type": "array",
			"prefixItems": [{ "type": "number" }, { "type": "number" }],
			"minItems": 2,
			"items": false
		},
		"unit": { "enum": [
			"%",
			"W",
			"W/kg",
			"rpm",
			"bpm",
			"N·m",
			"kJ",
			"kg",
			"s",
			"min",
			"count",
			"share",
			"ratio",
			"r"
		] },
		"level": { "enum": [
			"none",
			"note",
			"query",
			"refer"
		] },
		"channel": { "enum": [
			"power",
			"cadence",
			"heartRate",
			"speed",
			"altitude",
			"distance",
			"temperature",
			"balance"
		] },
		"requirement": { "enum": [
			"power",
			"cadence",
			"heartRate",
			"second recording",
			"history"
		] },
		"quantity": {
			"type": "object",
			"properties": {
				"value": { "type": "number" },
				"unit": { "$ref": "#/$defs/unit" }
			},
			"required": ["value", "unit"],
			"additionalProperties": false
		},
		"values": {
			"description": "What fills in a sentence.",
			"type": "object",
			"additionalProperties": { "oneOf": [
				{ "type": "number" },
				{ "type": "string" },
				{ "$ref": "#/$defs/quantity" }
			] }
		},
		"options": {
			"description": "The tunable numbers of a measure.",
			"type": "object",
			"additionalProperties": { "oneOf": [{ "type": "number" }, {
				"type": "array",
				"items": { "type": "number" }
			}] }
		},
		"interval": {
			"description": "95 % interval in the unit of the value.",
			"type": "array",
			"prefixItems": [{ "type": "number" }, { "type": "number" }],
			"minItems": 2,
			"items": false
		},
		"device": {
			"type": "object",
			"properties": {
				"maker": { "type": ["string", "null"] },
				"product": { "type": ["string", "null"] },
				"serial": { "type": ["string", "null"] }
			},
			"required": [
				"maker",
				"product",
				"serial"
			],
			"additionalProperties": false
		},
		"deviceFacts": {
			"description": "A meter as its owner declares it.",
			"type": "object",
			"properties": {
				"name": { "type": "string" },
				"place": { "enum": [
					"crank",
					"pedal",
					"hub",
					"trainer"
				] },
				"sides": { "enum": [1, 2] },
				"tolerancePercent": { "type": "number" }
			},
			"required": [
				"name",
				"place",
				"sides",
				"tolerancePercent"
			],
			"additionalProperties": false
		},
		"riderFacts": {
			"type": "object",
			"properties": {
				"massKg": { "type": "number" },
				"recordClass": { "enum": ["women", "open"] },
				"devices": {
					"type": "array",
					"items": { "$ref": "#/$defs/deviceFacts" }
				}
			},
			"additionalProperties": false
		},
		"raceFacts": {
			"type": "object",
			"properties": {
				"start": { "type": "string" },
				"finish": { "type": "string" },
				"kind": { "enum": [
					"race",
					"time trial",
					"workout"
				] },
				"required": {
					"type": "array",
					"items": { "$ref": "#/$defs/requirement" }
				}
			},
			"additionalProperties": false
		},
		"honestRange": {
			"description": "Where honest submissions lie: centre, and one standard deviation.",
			"type": "object",
			"properties": {
				"centre": { "type": "number" },
				"spread": { "type": "number" }
			},
			"required": ["centre", "spread"],
			"additionalProperties": false
		},
		"expected": {
			"type": "object",
			"properties": {
				"declared": { "$ref": "#/$defs/honestRange" },
				"field": { "$ref": "#/$defs/honestRange" }
			},
			"required": ["declared", "field"],
			"additionalProperties": false
		},
		"estimate": {
			"type": "object",
			"properties": {
				"value": { "type": "number" },
				"low": { "type": "number" },
				"high": { "type": "number" }
			},
			"required": [
				"value",
				"low",
				"high"
			],
			"additionalProperties": false
		},
		"reasonId": { "enum": [
			"no-second",
			"second-unreadable",
			"not-secure",
			"different-ride",
			"not-independent",
			"too-short",
			"too-few-blocks",
			"too-few-efforts",
			"no-channel",
			"mostly-invalid",
			"no-power-flow",
			"dead-channel",
			"decimal-power",
			"irregular-recorder",
			"no-detail",
			"no-totals",
			"no-event",
			"no-history",
			"history-too-thin",
			"no-heart-rate-range",
			"no-overlap-of-power",
			"narrow-range",
			"cannot-separate",
			"no-fact",
			"nothing-required",
			"not-a-race",
			"outdoors",
			"switched-off",
			"failed",
			"no-third",
			"no-drift",
			"no-crossing"
		] },
		"defect": {
			"type": "object",
			"properties": {
				"id": { "enum": [
					"truncated",
					"checksum-wrong",
					"never-closed",
					"chained",
					"several-sessions",
					"colliding-field",
					"odd-power-type",
					"markup-ends-early",
					"unreadable-values",
					"trailing-bytes",
					"power-in-developer-field",
					"zone-assumed",
					"no-clock",
					"unit-assumed"
				] },
				"values": { "$ref": "#/$defs/values" }
			},
			"required": ["id", "values"],
			"additionalProperties": false
		},
		"limit": {
			"type": "object",
			"properties": {
				"at least": { "type": "number" },
				"at most": { "type": "number" },
				"of": { "enum": [
					"value",
					"declared spread",
					"field spread"
				] },
				"end": { "enum": ["cautious", "estimate"] }
			},
			"required": ["of", "end"],
			"additionalProperties": false
		},
		"effectiveLimit": {
			"description": "A limit as it stood for this subject, in the unit of the value.",
			"type": "object",
			"properties": {
				"atLeast": { "type": ["number", "null"] },
				"atMost": { "type": ["number", "null"] },
				"end": { "enum": ["cautious", "estimate"] }
			},
			"required": [
				"atLeast",
				"atMost",
				"end"
			],
			"additionalProperties": false
		},
		"source": { "oneOf": [
			{
				"type": "object",
				"properties": {
					"kind": { "const": "published" },
					"citation": { "type": "string" }
				},
				"required": ["kind", "citation"],
				"additionalProperties": false
			},
			{
				"type": "object",
				"properties": {
					"kind": { "const": "common practice" },
					"note": { "type": "string" }
				},
				"required": ["kind", "note"],
				"additionalProperties": false
			},
			{
				"type": "object",
				"properties": {
					"kind": { "const": "from memory" },
					"note": { "type": "string" }
				},
				"required": ["kind", "note"],
				"additionalProperties": false
			},
			{
				"type": "object",
				"properties": {
					"kind": { "const": "measured" },
					"command": { "type": "string" },
					"falseAlarm": {
						"type": "object",
						"properties": {
							"query": { "type": "number" },
							"refer": { "type": "number" }
						},
						"required": ["query", "refer"],
						"additionalProperties": false
					},
					"note": { "type": "string" }
				},
				"required": [
					"kind",
					"command",
					"falseAlarm",
					"note"
				],
				"additionalProperties": false
			}
		] },
		"rule": {
			"description": "A rule as it was put to this submission.",
			"type": "object",
			"properties": {
				"id": { "type": "string" },
				"title": { "type": "string" },
				"family": { "enum": [
					"recording",
					"trace",
					"agreement",
					"physiology"
				] },
				"question": { "type": "string" },
				"measure": { "type": "string" },
				"subjects": { "enum": [
					"primary",
					"recordings",
					"pairs",
					"rider",
					"submission"
				] },
				"options": { "$ref": "#/$defs/options" },
				"needs": {
					"type": "array",
					"items": { "type": "string" }
				},
				"limits": {
					"type": "object",
					"properties": {
						"note": { "$ref": "#/$defs/limit" },
						"query": { "$ref": "#/$defs/limit" },
						"refer": { "$ref": "#/$defs/limit" }
					},
					"additionalProperties": false
				},
				"highest": { "enum": [
					"note",
					"query",
					"refer",
					"incomplete"
				] },
				"ceilings": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"when": { "type": "string" },
							"level": { "$ref": "#/$defs/level" },
							"why": { "type": "string" }
						},
						"required": [
							"when",
							"level",
							"why"
						],
						"additionalProperties": false
					}
				},
				"claims": {
					"type": "object",
					"properties": {
						"above": { "type": "string" },
						"below": { "type": "string" },
						"fine": { "type": "string" }
					},
					"required": ["fine"],
					"additionalProperties": false
				},
				"innocent": {
					"type": "array",
					"items": { "type": "string" }
				},
				"settles": {
					"type": "array",
					"items": { "type": "string" }
				},
				"source": { "$ref": "#/$defs/source" },
				"examples": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"value": { "type": "number" },
							"interval": { "$ref": "#/$defs/interval" },
							"count": { "type": "number" },
							"expected": { "$ref": "#/$defs/expected" },
							"circumstances": {
								"type": "array",
								"items": { "type": "string" }
							},
							"level": { "$ref": "#/$defs/level" }
						},
						"required": [
							"value",
							"interval",
							"count",
							"level"
						],
						"additionalProperties": false
					}
				},
				"explains": {
					"type": "array",
					"items": { "type": "string" }
				},
				"off": { "type": "string" }
			},
			"required": [
				"id",
				"title",
				"family",
				"question",
				"measure",
				"subjects",
				"options",
				"needs",
				"limits",
				"highest",
				"ceilings",
				"claims",
				"innocent",
				"settles",
				"source",
				"examples"
			],
			"additionalProperties": false
		},
		"recording": {
			"type": "object",
			"properties": {
				"subject": { "$ref": "#/$defs/subject" },
				"role": { "enum": ["primary", "second"] },
				"name": { "type": "string" },
				"sha256": { "$ref": "#/$defs/sha256" },
				"format": { "enum": [
					"fit",
					"tcx",
					"gpx",
					"csv"
				] },
				"device": { "$ref": "#/$defs/device" },
				"declared": { "oneOf": [{ "$ref": "#/$defs/deviceFacts" }, { "type": "null" }] },
				"sport": { "type": ["string", "null"] },
				"indoors": { "type": ["boolean", "null"] },
				"start": {
					"description": "Clock time of the first second, s since 1970.",
					"type": "number"
				},
				"seconds": { "type": "number" },
				"recordedSeconds": { "type": "number" },
				"meanPower": { "type": ["number", "null"] },
				"maxPower": { "type": ["number", "null"] },
				"channels": {
					"type": "array",
					"items": { "$ref": "#/$defs/channel" }
				},
				"defects": {
					"type": "array",
					"items": { "$ref": "#/$defs/defect" }
				}
			},
			"required": [
				"subject",
				"role",
				"name",
				"sha256",
				"format",
				"device",
				"declared",
				"sport",
				"indoors",
				"start",
				"seconds",
				"recordedSeconds",
				"meanPower",
				"maxPower",
				"channels",
				"defects"
			],
			"additionalProperties": false
		},
		"finding": {
			"type": "object",
			"properties": {
				"rule": { "type": "string" },
				"subject": { "$ref": "#/$defs/subject" },
				"level": { "$ref": "#/$defs/level" },
				"value": {
					"description": "Null only in a redacted report.",
					"type": ["number", "null"]
				},
				"unit": { "$ref": "#/$defs/unit" },
				"interval": { "oneOf": [{ "$ref": "#/$defs/interval" }, { "type": "null" }] },
				"count": { "type": "number" },
				"limits": {
					"type": "object",
					"properties": {
						"note": { "$ref": "#/$defs/effectiveLimit" },
						"query": { "$ref": "#/$defs/effectiveLimit" },
						"refer": { "$ref": "#/$defs/effectiveLimit" }
					},
					"additionalProperties": false
				},
				"expected": { "oneOf": [{ "$ref": "#/$defs/expected" }, { "type": "null" }] },
				"ceiling": { "type": ["string", "null"] },
				"remarks": {
					"type": "array",
					"items": { "type": "string" }
				},
				"explainedBy": { "type": ["string", "null"] },
				"stretches": {
					"type": "array",
					"items": { "$ref": "#/$defs/stretch" }
				},
				"summary": {
					"type": "object",
					"properties": {
						"id": { "enum": [
							"above",
							"below",
							"fine"
						] },
						"values": { "$ref": "#/$defs/values" }
					},
					"required": ["id", "values"],
					"additionalProperties": false
				},
				"chance": { "type": ["number", "null"] },
				"charts": {
					"type": "array",
					"items": { "type": "string" }
				}
			},
			"required": [
				"rule",
				"subject",
				"level",
				"value",
				"unit",
				"interval",
				"count",
				"limits",
				"expected",
				"ceiling",
				"remarks",
				"explainedBy",
				"stretches",
				"summary",
				"chance",
				"charts"
			],
			"additionalProperties": false
		},
		"measurement": {
			"type": "object",
			"properties": {
				"measure": { "type": "string" },
				"rule": { "type": "string" },
				"subject": { "$ref": "#/$defs/subject" },
				"state": { "enum": [
					"measured",
					"not applicable",
					"failed"
				] },
				"value": { "type": ["number", "null"] },
				"unit": { "oneOf": [{ "$ref": "#/$defs/unit" }, { "type": "null" }] },
				"interval": { "oneOf": [{ "$ref": "#/$defs/interval" }, { "type": "null" }] },
				"count": { "type": ["number", "null"] },
				"options": { "$ref": "#/$defs/options" },
				"reason": { "oneOf": [{
					"type": "object",
					"properties": {
						"id": { "$ref": "#/$defs/reasonId" },
						"values": { "$ref": "#/$defs/values" }
					},
					"required": ["id", "values"],
					"additionalProperties": false
				}, { "type": "null" }] }
			},
			"required": [
				"measure",
				"rule",
				"subject",
				"state",
				"value",
				"unit",
				"interval",
				"count",
				"options",
				"reason"
			],
			"additionalProperties": false
		},
		"alignment": {
			"type": "object",
			"properties": {
				"subject": { "$ref": "#/$defs/subject" },
				"secure": { "type": "boolean" },
				"reason": { "enum": [
					"power-agrees",
					"clock-chose",
					"channel-chose",
					"no-overlap",
					"too-short",
					"nothing-fits",
					"several-lags-fit",
					"same-recorder",
					"no-power"
				] },
				"offset": { "oneOf": [{ "$ref": "#/$defs/estimate" }, { "type": "null" }] },
				"zoneSlip": { "type": "number" },
				"driftPpm": { "oneOf": [{ "$ref": "#/$defs/estimate" }, { "type": "null" }] },
				"segments": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"stretch": { "$ref": "#/$defs/stretch" },
							"offset": { "type": "number" }
						},
						"required": ["stretch", "offset"],
						"additionalProperties": false
					}
				},
				"peak": { "type": "number" },
				"surrogatePeak": { "type": "number" },
				"margin": { "type": "number" },
				"correlation": { "type": "number" },
				"byChannel": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"channel": { "$ref": "#/$defs/channel" },
							"lag": { "type": "number" },
							"correlation": { "type": "number" }
						},
						"required": [
							"channel",
							"lag",
							"correlation"
						],
						"additionalProperties": false
					}
				},
				"coverage": { "type": "number" },
				"origin": { "enum": [
					"independent",
					"same sensor",
					"derived",
					"unknown"
				] },
				"originEvidence": { "oneOf": [{
					"type": "object",
					"properties": {
						"left": { "type": "number" },
						"gain": { "type": "number" },
						"dynamics": { "type": "number" }
					},
					"required": [
						"left",
						"gain",
						"dynamics"
					],
					"additionalProperties": false
				}, { "type": "null" }] }
			},
			"required": [
				"subject",
				"secure",
				"reason",
				"offset",
				"zoneSlip",
				"driftPpm",
				"segments",
				"peak",
				"surrogatePeak",
				"margin",
				"correlation",
				"byChannel",
				"coverage",
				"origin",
				"originEvidence"
			],
			"additionalProperties": false
		},
		"section": {
			"type": "object",
			"properties": {
				"kind": { "enum": [
					"steady",
					"sprint",
					"over-under",
					"set-point block",
					"climb",
					"coasting",
					"first third",
					"last third"
				] },
				"stretch": { "$ref": "#/$defs/stretch" },
				"watts": { "type": ["number", "null"] },
				"rise": { "type": ["number", "null"] },
				"differences": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"subject": { "$ref": "#/$defs/subject" },
							"percent": { "type": "number" },
							"low": { "type": ["number", "null"] },
							"high": { "type": ["number", "null"] }
						},
						"required": [
							"subject",
							"percent",
							"low",
							"high"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"stretch",
				"watts",
				"rise",
				"differences"
			],
			"additionalProperties": false
		},
		"step": {
			"type": "object",
			"properties": {
				"subject": { "$ref": "#/$defs/subject" },
				"id": { "enum": [
					"read",
					"doubled-seconds",
					"backward-steps",
					"far-records-dropped",
					"gaps",
					"pauses",
					"bridged",
					"aligned",
					"extra-meter",
					"window-given",
					"window-proposed"
				] },
				"values": { "$ref": "#/$defs/values" }
			},
			"required": [
				"subject",
				"id",
				"values"
			],
			"additionalProperties": false
		},
		"readings": {
			"description": "One a second; null where nothing was recorded.",
			"type": "array",
			"items": { "type": ["number", "null"] }
		},
		"tracesChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "traces" },
				"id": { "type": "string" },
				"start": { "type": "number" },
				"primary": { "$ref": "#/$defs/readings" },
				"seconds": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"subject": { "$ref": "#/$defs/subject" },
							"power": { "$ref": "#/$defs/readings" }
						},
						"required": ["subject", "power"],
						"additionalProperties": false
					}
				},
				"cadence": { "oneOf": [{ "$ref": "#/$defs/readings" }, { "type": "null" }] },
				"heartRate": { "oneOf": [{ "$ref": "#/$defs/readings" }, { "type": "null" }] }
			},
			"required": [
				"kind",
				"id",
				"start",
				"primary",
				"seconds",
				"cadence",
				"heartRate"
			],
			"additionalProperties": false
		},
		"ratioChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "ratio" },
				"id": { "type": "string" },
				"subject": { "$ref": "#/$defs/subject" },
				"blocks": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"at": { "type": "number" },
							"percent": { "type": "number" },
							"watts": { "type": "number" }
						},
						"required": [
							"at",
							"percent",
							"watts"
						],
						"additionalProperties": false
					}
				},
				"trend": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"at": { "type": "number" },
							"percent": { "type": "number" },
							"low": { "type": "number" },
							"high": { "type": "number" }
						},
						"required": [
							"at",
							"percent",
							"low",
							"high"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"subject",
				"blocks",
				"trend"
			],
			"additionalProperties": false
		},
		"dependenceChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "dependence" },
				"id": { "type": "string" },
				"subject": { "$ref": "#/$defs/subject" },
				"of": { "enum": ["power", "cadence"] },
				"unit": { "enum": ["W", "rpm"] },
				"points": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"x": { "type": "number" },
							"percent": { "type": "number" }
						},
						"required": ["x", "percent"],
						"additionalProperties": false
					}
				},
				"bands": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"from": { "type": "number" },
							"to": { "type": "number" },
							"count": { "type": "number" },
							"percent": { "type": "number" },
							"low": { "type": "number" },
							"high": { "type": "number" }
						},
						"required": [
							"from",
							"to",
							"count",
							"percent",
							"low",
							"high"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"subject",
				"of",
				"unit",
				"points",
				"bands"
			],
			"additionalProperties": false
		},
		"agreementChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "agreement" },
				"id": { "type": "string" },
				"subject": { "$ref": "#/$defs/subject" },
				"points": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"watts": { "type": "number" },
							"percent": { "type": "number" }
						},
						"required": ["watts", "percent"],
						"additionalProperties": false
					}
				},
				"mean": { "type": "number" },
				"low": { "type": "number" },
				"high": { "type": "number" }
			},
			"required": [
				"kind",
				"id",
				"subject",
				"points",
				"mean",
				"low",
				"high"
			],
			"additionalProperties": false
		},
		"effortsChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "efforts" },
				"id": { "type": "string" },
				"subject": { "$ref": "#/$defs/subject" },
				"efforts": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"from": { "type": "number" },
							"primary": { "$ref": "#/$defs/readings" },
							"second": { "$ref": "#/$defs/readings" },
							"peakPrimary": { "type": "number" },
							"peakSecond": { "type": "number" },
							"excess": { "type": "number" },
							"seconds": { "type": "number" }
						},
						"required": [
							"from",
							"primary",
							"second",
							"peakPrimary",
							"peakSecond",
							"excess",
							"seconds"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"subject",
				"efforts"
			],
			"additionalProperties": false
		},
		"curveChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "curve" },
				"id": { "type": "string" },
				"points": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"duration": { "type": "number" },
							"race": { "type": ["number", "null"] },
							"best": { "type": ["number", "null"] },
							"allowed": { "type": ["number", "null"] }
						},
						"required": [
							"duration",
							"race",
							"best",
							"allowed"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"points"
			],
			"additionalProperties": false
		},
		"responseChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "response" },
				"id": { "type": "string" },
				"blocks": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"at": { "type": "number" },
							"watts": { "type": "number" },
							"heartRate": { "type": "number" },
							"predicted": { "type": "number" }
						},
						"required": [
							"at",
							"watts",
							"heartRate",
							"predicted"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"blocks"
			],
			"additionalProperties": false
		},
		"closeUpsChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "close-ups" },
				"id": { "type": "string" },
				"closeUps": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"from": { "type": "number" },
							"power": { "$ref": "#/$defs/readings" },
							"cadence": { "oneOf": [{ "$ref": "#/$defs/readings" }, { "type": "null" }] },
							"heartRate": { "oneOf": [{ "$ref": "#/$defs/readings" }, { "type": "null" }] },
							"marked": { "$ref": "#/$defs/stretch" }
						},
						"required": [
							"from",
							"power",
							"cadence",
							"heartRate",
							"marked"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"closeUps"
			],
			"additionalProperties": false
		},
		"coverageChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "coverage" },
				"id": { "type": "string" },
				"recording": { "$ref": "#/$defs/stretch" },
				"window": { "$ref": "#/$defs/stretch" },
				"lost": {
					"type": "array",
					"items": { "$ref": "#/$defs/stretch" }
				},
				"paused": {
					"type": "array",
					"items": { "$ref": "#/$defs/stretch" }
				}
			},
			"required": [
				"kind",
				"id",
				"recording",
				"window",
				"lost",
				"paused"
			],
			"additionalProperties": false
		},
		"totalsChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "totals" },
				"id": { "type": "string" },
				"rows": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"total": { "type": "string" },
							"unit": { "$ref": "#/$defs/unit" },
							"stated": { "type": "number" },
							"fromSamples": {
								"type": "array",
								"items": {
									"type": "object",
									"properties": {
										"definition": { "type": "string" },
										"value": { "type": "number" }
									},
									"required": ["definition", "value"],
									"additionalProperties": false
								}
							},
							"off": { "type": "number" }
						},
						"required": [
							"total",
							"unit",
							"stated",
							"fromSamples",
							"off"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"rows"
			],
			"additionalProperties": false
		},
		"combChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "comb" },
				"id": { "type": "string" },
				"from": { "type": "number" },
				"counts": {
					"type": "array",
					"items": { "type": "number" }
				},
				"expected": {
					"type": "array",
					"items": { "type": "number" }
				},
				"factor": { "type": "number" },
				"marked": {
					"type": "array",
					"items": { "type": "number" }
				},
				"stretch": { "$ref": "#/$defs/stretch" }
			},
			"required": [
				"kind",
				"id",
				"from",
				"counts",
				"expected",
				"factor",
				"marked",
				"stretch"
			],
			"additionalProperties": false
		},
		"copiesChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "copies" },
				"id": { "type": "string" },
				"copies": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"at": {
								"type": "array",
								"prefixItems": [{ "type": "number" }, { "type": "number" }],
								"minItems": 2,
								"items": false
							},
							"seconds": { "type": "number" },
							"first": { "$ref": "#/$defs/readings" },
							"second": { "$ref": "#/$defs/readings" }
						},
						"required": [
							"at",
							"seconds",
							"first",
							"second"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"copies"
			],
			"additionalProperties": false
		},
		"plateausChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "plateaus" },
				"id": { "type": "string" },
				"power": { "$ref": "#/$defs/readings" },
				"plateaus": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"stretch": { "$ref": "#/$defs/stretch" },
							"watts": { "type": "number" }
						},
						"required": ["stretch", "watts"],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"power",
				"plateaus"
			],
			"additionalProperties": false
		},
		"averagingChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "averaging" },
				"id": { "type": "string" },
				"correlation": {
					"type": "array",
					"items": { "type": "number" }
				},
				"seconds": { "type": "number" },
				"from": { "type": "number" },
				"power": { "$ref": "#/$defs/readings" }
			},
			"required": [
				"kind",
				"id",
				"correlation",
				"seconds",
				"from",
				"power"
			],
			"additionalProperties": false
		},
		"speedCurveChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "speed-curve" },
				"id": { "type": "string" },
				"points": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"speed": { "type": "number" },
							"watts": { "type": "number" }
						},
						"required": ["speed", "watts"],
						"additionalProperties": false
					}
				},
				"curve": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"speed": { "type": "number" },
							"watts": { "type": "number" }
						},
						"required": ["speed", "watts"],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"points",
				"curve"
			],
			"additionalProperties": false
		},
		"traitsChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "traits" },
				"id": { "type": "string" },
				"traits": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"trait": { "type": "string" },
							"value": { "type": "number" },
							"unit": { "$ref": "#/$defs/unit" },
							"atLeast": { "type": ["number", "null"] },
							"atMost": { "type": ["number", "null"] },
							"shown": { "type": "boolean" }
						},
						"required": [
							"trait",
							"value",
							"unit",
							"atLeast",
							"atMost",
							"shown"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"traits"
			],
			"additionalProperties": false
		},
		"chart": { "oneOf": [
			{ "$ref": "#/$defs/tracesChart" },
			{ "$ref": "#/$defs/ratioChart" },
			{ "$ref": "#/$defs/dependenceChart" },
			{ "$ref": "#/$defs/agreementChart" },
			{ "$ref": "#/$defs/effortsChart" },
			{ "$ref": "#/$defs/curveChart" },
			{ "$ref": "#/$defs/responseChart" },
			{ "$ref": "#/$defs/closeUpsChart" },
			{ "$ref": "#/$defs/coverageChart" },
			{ "$ref": "#/$defs/totalsChart" },
			{ "$ref": "#/$defs/combChart" },
			{ "$ref": "#/$defs/copiesChart" },
			{ "$ref": "#/$defs/plateausChart" },
			{ "$ref": "#/$defs/averagingChart" },
			{ "$ref": "#/$defs/speedCurveChart" },
			{ "$ref": "#/$defs/traitsChart" },
			{ "$ref": "#/$defs/metersChart" }
		] },
		"metersChart": {
			"type": "object",
			"properties": {
				"kind": { "const": "meters" },
				"id": { "type": "string" },
				"meters": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"subject": { "$ref": "#/$defs/subject" },
							"watts": { "type": "number" },
							"percent": { "type": "number" },
							"scatter": { "type": ["number", "null"] }
						},
						"required": [
							"subject",
							"watts",
							"percent",
							"scatter"
						],
						"additionalProperties": false
					}
				},
				"pairs": {
					"type": "array",
					"items": {
						"type": "object",
						"properties": {
							"a": { "$ref": "#/$defs/subject" },
							"b": { "$ref": "#/$defs/subject" },
							"percent": { "type": "number" }
						},
						"required": [
							"a",
							"b",
							"percent"
						],
						"additionalProperties": false
					}
				}
			},
			"required": [
				"kind",
				"id",
				"meters",
				"pairs"
			],
			"additionalProperties": false
		}
	}
};
// src/report/json.ts
const definitions = report_schema_default.$defs;
/**
* The report as JSON: keys in the order of the schema, names of free maps sorted, lists of plain values on
* one line. One report has one text, byte for byte, however the object was put together.
*/
function renderJson(report) {
	return `${write(report, report_schema_default, "")}\n`;
}
function follow$1(node) {
	const name = node?.$ref?.replace("#/$defs/", "");
	return name === void 0 ? node ?? {} : follow$1(definitions[name]);
}
/** Of alternatives, the one whose `kind` is the value's own, else the first that has properties. */
function choose(node, value) {
	const options = node.oneOf?.map(follow$1);
	if (options === void 0) return node;
	const kind = value.kind;
	return options.find((one) => (one.properties?.kind)?.const === kind) ?? options.find((one) => one.properties !== void 0) ?? node;
}
function write(value, at, indent) {
	if (typeof value === "number") return Number.isFinite(value) ? JSON.stringify(value) : "null";
	if (value === null || typeof value !== "object") return JSON.stringify(value ?? null);
	const node = follow$1(at);
	const inner = `${indent} `;
	if (isList(value)) {
		if (value.every((one) => one === null || typeof one !== "object")) return `[${value.map((one) => write(one, void 0, "")).join(",")}]`;
		return `[\n${value.map((one, index) => inner + write(one, node.prefixItems?.[index] ?? node.items, inner)).join(",\n")}\n${indent}]`;
	}
	const chosen = choose(node, value);
	const free = typeof chosen.additionalProperties === "object" ? chosen.additionalProperties : void 0;
	const known = Object.keys(chosen.properties ?? {}).filter((key) => Object.hasOwn(value, key));
	const others = Object.keys(value).filter((key) => !known.includes(key)).sort();
	const lines = [...known, ...others].filter((key) => value[key] !== void 0).map((key) => `${inner}${JSON.stringify(key)}: ${write(value[key], chosen.properties?.[key] ?? free, inner)}`);
	return lines.length === 0 ? "{}" : `{\n${lines.join(",\n")}\n${indent}}`;
}
function isList(value) {
	return Array.isArray(value);
}
// node_modules/ansi-regex/index.js
const ST = String.raw`(?:\u001B\u005C|\u009C)`;
const stringControls = String.raw`\u0018\u001A\u001B\u0080-\u009F`;
const osc = String.raw`(?:\u001B\]|\u009D)[^\u0007${stringControls}]*(?:\u0007|${ST})`;
const controlString = String.raw`(?:\u001B[PX^_k]|[\u0090\u0098\u009E\u009F])[^${stringControls}]*${ST}`;
const pattern = `${String.raw`\u001B\](?:P[\dA-Fa-f]{7}|R)(?:\u0007|${ST})?`}|${osc}|${controlString}|${String.raw`(?:\u001B\[|\u009B)[\u0030-\u003F]*[\u0020-\u002F]*[\u0040-\u007E]`}|${String.raw`\u001B(?:[\u0020-\u002F]+[\u0030-\u007E]|[\dA-PR-TZcf-oq-uy=><~|}])`}`;
function ansiRegex({ onlyFirst = false } = {}) {
	return new RegExp(pattern, onlyFirst ? void 0 : "g");
}
// node_modules/strip-ansi/index.js
const regex = ansiRegex();
function stripAnsi(string) {
	if (typeof string !== "string") throw new TypeError(`Expected a \`string\`, got \`${typeof string}\``);
	if (!string.includes("\x1B") && !string.includes("")) return string;
	return string.replace(regex, "");
}
const ambiguousRanges = [
	161,
	161,
	164,
	164,
	167,
	168,
	170,
	170,
	173,
	174,
	176,
	180,
	182,
	186,
	188,
	191,
	198,
	198,
	208,
	208,
	215,
	216,
	222,
	225,
	230,
	230,
	232,
	234,
	236,
	237,
	240,
	240,
	242,
	243,
	247,
	250,
	252,
	252,
	254,
	254,
	257,
	257,
	273,
	273,
	275,
	275,
	283,
	283,
	294,
	295,
	299,
	299,
	305,
	307,
	312,
	312,
	319,
	322,
	324,
	324,
	328,
	331,
	333,
	333,
	338,
	339,
	358,
	359,
	363,
	363,
	462,
	462,
	464,
	464,
	466,
	466,
	468,
	468,
	470,
	470,
	472,
	472,
	474,
	474,
	476,
	476,
	593,
	593,
	609,
	609,
	708,
	708,
	711,
	711,
	713,
	715,
	717,
	717,
	720,
	720,
	728,
	731,
	733,
	733,
	735,
	735,
	768,
	879,
	913,
	929,
	931,
	937,
	945,
	961,
	963,
	969,
	1025,
	1025,
	1040,
	1103,
	1105,
	1105,
	8208,
	8208,
	8211,
	8214,
	8216,
	8217,
	8220,
	8221,
	8224,
	8226,
	8228,
	8231,
	8240,
	8240,
	8242,
	8243,
	8245,
	8245,
	8251,
	8251,
	8254,
	8254,
	8308,
	8308,
	8319,
	8319,
	8321,
	8324,
	8364,
	8364,
	8451,
	8451,
	8453,
	8453,
	8457,
	8457,
	8467,
	8467,
	8470,
	8470,
	8481,
	8482,
	8486,
	8486,
	8491,
	8491,
	8531,
	8532,
	8539,
	8542,
	8544,
	8555,
	8560,
	8569,
	8585,
	8585,
	8592,
	8601,
	8632,
	8633,
	8658,
	8658,
	8660,
	8660,
	8679,
	8679,
	8704,
	8704,
	8706,
	8707,
	8711,
	8712,
	8715,
	8715,
	8719,
	8719,
	8721,
	8721,
	8725,
	8725,
	8730,
	8730,
	8733,
	8736,
	8739,
	8739,
	8741,
	8741,
	8743,
	8748,
	8750,
	8750,
	8756,
	8759,
	8764,
	8765,
	8776,
	8776,
	8780,
	8780,
	8786,
	8786,
	8800,
	8801,
	8804,
	8807,
	8810,
	8811,
	8814,
	8815,
	8834,
	8835,
	8838,
	8839,
	8853,
	8853,
	8857,
	8857,
	8869,
	8869,
	8895,
	8895,
	8978,
	8978,
	9312,
	9449,
	9451,
	9547,
	9552,
	9587,
	9600,
	9615,
	9618,
	9621,
	9632,
	9633,
	9635,
	9641,
	9650,
	9651,
	9654,
	9655,
	9660,
	9661,
	9664,
	9665,
	9670,
	9672,
	9675,
	9675,
	9678,
	9681,
	9698,
	9701,
	9711,
	9711,
	9733,
	9734,
	9737,
	9737,
	9742,
	9743,
	9756,
	9756,
	9758,
	9758,
	9792,
	9792,
	9794,
	9794,
	9824,
	9825,
	9827,
	9829,
	9831,
	9834,
	9836,
	9837,
	9839,
	9839,
	9886,
	9887,
	9919,
	9919,
	9926,
	9933,
	9935,
	9939,
	9941,
	9953,
	9955,
	9955,
	9960,
	9961,
	9963,
	9969,
	9972,
	9972,
	9974,
	9977,
	9979,
	9980,
	9982,
	9983,
	10045,
	10045,
	10102,
	10111,
	11094,
	11097,
	12872,
	12879,
	57344,
	63743,
	65024,
	65039,
	65533,
	65533,
	127232,
	127242,
	127248,
	127277,
	127280,
	127337,
	127344,
	127373,
	127375,
	127376,
	127387,
	127404,
	917760,
	917999,
	983040,
	1048573,
	1048576,
	1114109
];
const fullwidthRanges = [
	12288,
	12288,
	65281,
	65376,
	65504,
	65510
];
const wideRanges = [
	4352,
	4447,
	8986,
	8987,
	9001,
	9002,
	9193,
	9196,
	9200,
	9200,
	9203,
	9203,
	9725,
	9726,
	9748,
	9749,
	9776,
	9783,
	9800,
	9811,
	9855,
	9855,
	9866,
	9871,
	9875,
	9875,
	9889,
	9889,
	9898,
	9899,
	9917,
	9918,
	9924,
	9925,
	9934,
	9934,
	9940,
	9940,
	9962,
	9962,
	9970,
	9971,
	9973,
	9973,
	9978,
	9978,
	9981,
	9981,
	9989,
	9989,
	9994,
	9995,
	10024,
	10024,
	10060,
	10060,
	10062,
	10062,
	10067,
	10069,
	10071,
	10071,
	10133,
	10135,
	10160,
	10160,
	10175,
	10175,
	11035,
	11036,
	11088,
	11088,
	11093,
	11093,
	11904,
	11929,
	11931,
	12019,
	12032,
	12245,
	12272,
	12287,
	12289,
	12350,
	12353,
	12438,
	12441,
	12543,
	12549,
	12591,
	12593,
	12686,
	12688,
	12773,
	12783,
	12830,
	12832,
	12871,
	12880,
	42124,
	42128,
	42182,
	43360,
	43388,
	44032,
	55203,
	63744,
	64255,
	65040,
	65049,
	65072,
	65106,
	65108,
	65126,
	65128,
	65131,
	94176,
	94180,
	94192,
	94198,
	94208,
	101594,
	101631,
	101664,
	101760,
	101874,
	101888,
	102801,
	102816,
	102866,
	110576,
	110579,
	110581,
	110587,
	110589,
	110590,
	110592,
	110888,
	110898,
	110898,
	110928,
	110930,
	110933,
	110933,
	110948,
	110952,
	110960,
	111355,
	119552,
	119638,
	119648,
	119670,
	126980,
	126980,
	127183,
	127183,
	127374,
	127374,
	127377,
	127386,
	127406,
	127406,
	127488,
	127490,
	127504,
	127547,
	127552,
	127560,
	127568,
	127569,
	127584,
	127589,
	127744,
	127776,
	127789,
	127797,
	127799,
	127868,
	127870,
	127891,
	127904,
	127946,
	127951,
	127955,
	127968,
	127984,
	127988,
	127988,
	127992,
	128062,
	128064,
	128064,
	128066,
	128252,
	128255,
	128317,
	128331,
	128334,
	128336,
	128359,
	128378,
	128378,
	128405,
	128406,
	128420,
	128420,
	128507,
	128591,
	128640,
	128709,
	128716,
	128716,
	128720,
	128722,
	128725,
	128729,
	128732,
	128735,
	128747,
	128748,
	128756,
	128764,
	128986,
	128986,
	128992,
	129003,
	129008,
	129008,
	129292,
	129338,
	129340,
	129349,
	129351,
	129535,
	129648,
	129660,
	129664,
	129734,
	129736,
	129736,
	129740,
	129757,
	129759,
	129771,
	129775,
	129786,
	131072,
	196605,
	196608,
	262141
];
// node_modules/get-east-asian-width/utilities.js
/**
Binary search on a sorted flat array of [start, end] pairs.

@param {number[]} ranges - Flat array of inclusive [start, end] range pairs, e.g. [0, 5, 10, 20].
@param {number} codePoint - The value to search for.
@returns {boolean} Whether the value falls within any of the ranges.
*/
const isInRange = (ranges, codePoint) => {
	let low = 0;
	let high = Math.floor(ranges.length / 2) - 1;
	while (low <= high) {
		const mid = Math.floor((low + high) / 2);
		const i = mid * 2;
		if (codePoint < ranges[i]) high = mid - 1;
		else if (codePoint > ranges[i + 1]) low = mid + 1;
		else return true;
	}
	return false;
};
// node_modules/get-east-asian-width/lookup.js
const commonCjkCodePoint = 19968;
const [wideFastPathStart, wideFastPathEnd] = /* #__PURE__ */ findWideFastPathRange(wideRanges);
function findWideFastPathRange(ranges) {
	let fastPathStart = ranges[0];
	let fastPathEnd = ranges[1];
	for (let index = 0; index < ranges.length; index += 2) {
		const start = ranges[index];
		const end = ranges[index + 1];
		if (commonCjkCodePoint >= start && commonCjkCodePoint <= end) return [start, end];
		if (end - start > fastPathEnd - fastPathStart) {
			fastPathStart = start;
			fastPathEnd = end;
		}
	}
	return [fastPathStart, fastPathEnd];
}
const isAmbiguous = (codePoint) => {
	if (codePoint < 161 || codePoint > 1114109) return false;
	return isInRange(ambiguousRanges, codePoint);
};
const isFullwidth = (codePoint) => {
	if (codePoint < 12288 || codePoint > 65510) return false;
	return isInRange(fullwidthRanges, codePoint);
};
const isWide = (codePoint) => {
	if (codePoint >= wideFastPathStart && codePoint <= wideFastPathEnd) return true;
	if (codePoint < 4352 || codePoint > 262141) return false;
	return isInRange(wideRanges, codePoint);
};
// node_modules/get-east-asian-width/index.js
function validate(codePoint) {
	if (!Number.isSafeInteger(codePoint)) throw new TypeError(`Expected a code point, got \`${typeof codePoint}\`.`);
}
function eastAsianWidth(codePoint, { ambiguousAsWide = false } = {}) {
	validate(codePoint);
	if (isFullwidth(codePoint) || isWide(codePoint) || ambiguousAsWide && isAmbiguous(codePoint)) return 2;
	return 1;
}
// node_modules/string-width/index.js
/**
Logic:
- Segment graphemes to match how terminals render clusters.
- Width rules:
1. Skip non-printing clusters (Default_Ignorable, Control, pure nonspacing/enclosing Mark, lone Surrogates). Tabs are ignored by design.
2. RGI emoji clusters (\p{RGI_Emoji}) are double-width.
3. Minimally-qualified/unqualified emoji clusters (ZWJ sequences with 2+ Extended_Pictographic, or keycap sequences) are double-width.
4. Hangul jamo collapse each standard modern Hangul L+V or L+V+T syllable piece to width 2.
Unmatched repeated leading/vowel/trailing jamo stay additive because that matches how the terminals we target render them.
5. Otherwise use East Asian Width of the cluster's first visible code point, and add widths for trailing spacing marks and Halfwidth/Fullwidth Forms within the same cluster (e.g., dakuten/handakuten/prolonged sound mark).
*/
const segmenter = new Intl.Segmenter();
const visibleCharacterRegex = /[^\p{Default_Ignorable_Code_Point}\p{Control}\p{Format}\p{Nonspacing_Mark}\p{Enclosing_Mark}\p{Surrogate}]/v;
const spacingMarkRegex = /\p{Spacing_Mark}/v;
const rgiEmojiRegex = /^\p{RGI_Emoji}$/v;
const unqualifiedKeycapRegex = /^[\d#*]\u20E3$/;
const extendedPictographicRegex = /\p{Extended_Pictographic}/gu;
function isDoubleWidthNonRgiEmojiSequence(segment) {
	if (segment.length > 50) return false;
	if (unqualifiedKeycapRegex.test(segment)) return true;
	if (segment.includes("‍")) {
		const pictographics = segment.match(extendedPictographicRegex);
		return pictographics !== null && pictographics.length >= 2;
	}
	return false;
}
function baseVisible(segment) {
	const index = segment.search(visibleCharacterRegex);
	return index === -1 ? void 0 : segment.slice(index);
}
function isHangulLeadingJamo(codePoint) {
	return codePoint >= 4352 && codePoint <= 4447 || codePoint >= 43360 && codePoint <= 43388;
}
function isHangulVowelJamo(codePoint) {
	return codePoint >= 4448 && codePoint <= 4519 || codePoint >= 55216 && codePoint <= 55238;
}
function isHangulTrailingJamo(codePoint) {
	return codePoint >= 4520 && codePoint <= 4607 || codePoint >= 55243 && codePoint <= 55291;
}
function isHangulJamo(codePoint) {
	return isHangulLeadingJamo(codePoint) || isHangulVowelJamo(codePoint) || isHangulTrailingJamo(codePoint);
}
function hangulClusterWidth(visibleSegment, eastAsianWidthOptions) {
	const codePoints = [];
	for (const character of visibleSegment) {
		if (!visibleCharacterRegex.test(character)) continue;
		codePoints.push(character.codePointAt(0));
	}
	if (codePoints.length === 0) return;
	let width = 0;
	for (let index = 0; index < codePoints.length; index++) {
		const codePoint = codePoints[index];
		if (!isHangulJamo(codePoint)) {
			if (width === 0) return;
			for (let remaining = index; remaining < codePoints.length; remaining++) width += eastAsianWidth(codePoints[remaining], eastAsianWidthOptions);
			return width;
		}
		if (isHangulLeadingJamo(codePoint) && isHangulVowelJamo(codePoints[index + 1])) {
			width += 2;
			index += isHangulTrailingJamo(codePoints[index + 2]) ? 2 : 1;
			continue;
		}
		width += eastAsianWidth(codePoint, eastAsianWidthOptions);
	}
	return width;
}
function trailingWidth(visibleSegment, eastAsianWidthOptions) {
	let extra = 0;
	let first = true;
	for (const character of visibleSegment) {
		if (first) {
			first = false;
			continue;
		}
		if (spacingMarkRegex.test(character) || character >= "＀" && character <= "￯") extra += eastAsianWidth(character.codePointAt(0), eastAsianWidthOptions);
	}
	return extra;
}
function stringWidth(input, options = {}) {
	if (typeof input !== "string" || input.length === 0) return 0;
	const { ambiguousIsNarrow = true, countAnsiEscapeCodes = false } = options;
	let string = input;
	if (!countAnsiEscapeCodes && (string.includes("\x1B") || string.includes(""))) string = stripAnsi(string);
	if (string.length === 0) return 0;
	if (/^[\u0020-\u007E]*$/.test(string)) return string.length;
	let width = 0;
	const eastAsianWidthOptions = { ambiguousAsWide: !ambiguousIsNarrow };
	for (const { segment } of segmenter.segment(string)) {
		const visibleSegment = baseVisible(segment);
		if (visibleSegment === void 0) continue;
		if (rgiEmojiRegex.test(segment) || isDoubleWidthNonRgiEmojiSequence(segment)) {
			width += 2;
			continue;
		}
		const hangulWidth = hangulClusterWidth(visibleSegment, eastAsianWidthOptions);
		if (hangulWidth !== void 0) {
			width += hangulWidth;
			continue;
		}
		const codePoint = visibleSegment.codePointAt(0);
		width += eastAsianWidth(codePoint, eastAsianWidthOptions);
		width += trailingWidth(visibleSegment, eastAsianWidthOptions);
	}
	return width;
}
// src/report/wrap.ts
/** Columns that a text takes; the usual case is counted without a table of wide characters. */
function columns(text) {
	return /^[\x20-\x7e]*$/.test(text) ? text.length : stringWidth(text);
}
/** Breaks at spaces, and inside a word only when it is longer than a line. No-break spaces hold. */
function wrap(text, width) {
	const lines = [];
	let line = "";
	let used = 0;
	for (const word of text.split(" ").flatMap((one) => pieces(one, width))) {
		const size = columns(word);
		if (line !== "" && used + 1 + size > width) {
			lines.push(line);
			line = "";
		}
		used = line === "" ? size : used + 1 + size;
		line = line === "" ? word : `${line} ${word}`;
	}
	return [...lines, line];
}
/** A word in parts that fit on a line, each of at least one character. */
function pieces(word, width) {
	if (columns(word) <= width) return [word];
	const parts = [];
	let part = "";
	let used = 0;
	for (const character of word) {
		const size = columns(character);
		if (part !== "" && used + size > width) {
			parts.push(part);
			part = "";
			used = 0;
		}
		part += character;
		used += size;
	}
	return [...parts, part];
}
// src/report/chart/spark.ts
const blocks = "▁▂▃▄▅▆▇█";
const ramp = "_.-=*#%@";
/** The mean of what was read in each of `cells` equal parts; null where nothing was. */
function condense(values, cells) {
	const count = Math.min(cells, values.length);
	return Array.from({ length: count }, (_, cell) => {
		const from = Math.floor(cell * values.length / count);
		const to = Math.floor((cell + 1) * values.length / count);
		let sum = 0;
		let read = 0;
		for (let at = from; at < to; at++) {
			const value = values[at] ?? null;
			if (value === null) continue;
			sum += value;
			read++;
		}
		return read === 0 ? null : sum / read;
	});
}
/** A row of block characters between `low` and `high`, blank where nothing was read. */
function spark(values, [low, high], ascii) {
	const marks = ascii ? ramp : blocks;
	const reach = high > low ? high - low : 1;
	return values.map((value) => {
		if (value === null) return " ";
		const step = Math.floor((value - low) / reach * marks.length);
		return marks[Math.min(marks.length - 1, Math.max(0, step))];
	}).join("");
}
// src/report/mermaid.ts
const colours = [
	palette.a[0],
	palette.b[0],
	palette.c[0]
];
const colourNames = [
	"blue",
	"orange",
	"green"
];
/** More places than this and their names run into each other. */
const mostPlaces = 18;
/** The chart in this language; null for kinds that it cannot show. */
function mermaid(chart) {
	if (chart.kind === "curve") return curve(chart);
	if (chart.kind === "ratio") return ratio(chart);
	return null;
}
function curve({ points }) {
	const whole = points.flatMap(({ duration: seconds, race, best, allowed }) => race === null || best === null || allowed === null ? [] : [{
		seconds,
		race,
		best,
		allowed
	}]);
	const step = Math.ceil(whole.length / mostPlaces);
	const shown = whole.filter((_, index) => index % step === 0);
	return draw("Power–duration curve, W", "W", shown.map(({ seconds }) => duration(seconds)), [
		{
			name: "race",
			values: shown.map((point) => point.race)
		},
		{
			name: "best of the earlier rides",
			values: shown.map((point) => point.best)
		},
		{
			name: "upper end of what they allow",
			values: shown.map((point) => point.allowed)
		}
	]);
}
function ratio({ blocks }) {
	const percents = condense(blocks.map((block) => block.percent), mostPlaces).filter((value) => value !== null);
	return draw("Primary over second, %", "%", condense(blocks.map((block) => block.at), mostPlaces).filter((value) => value !== null).map(position), [{
		name: "primary over second",
		values: percents
	}, {
		name: "equal",
		values: percents.map(() => 100)
	}]);
}
function draw(title, unit, places, lines) {
	if (places.length < 2) return null;
	const all = lines.flatMap((line) => line.values);
	const [low, high] = [Math.min(...all), Math.max(...all)];
	const margin = (high - low) * .05 || 1;
	const list = (values) => values.map((value) => Math.round(value * 10) / 10).join(", ");
	return {
		title,
		source: [
			`%%{init: {"theme": "base", "themeVariables": {"xyChart": {"plotColorPalette": "${colours.join(", ")}"}}}}%%`,
			"xychart-beta",
			`  x-axis [${places.map((place) => `"${place.replaceAll("\xA0", " ")}"`).join(", ")}]`,
			`  y-axis "${unit}" ${Math.floor(low - margin)} --> ${Math.ceil(high + margin)}`,
			...lines.map((line) => `  line [${list(line.values)}]`)
		].join("\n"),
		legend: `Lines: ${lines.map((line, index) => `${line.name} (${colourNames[index]})`).join(", ")}.`
	};
}
// src/report/markdown.ts
/** Room kept for the line that says how much was left out. */
const closing = 200;
const sparkCells = 48;
/** More drawings than this make a summary slow to read. */
const mostDrawings = 2;
/**
* The report as GitHub-flavoured Markdown for a job summary or a comment: grade, table of findings, drawings,
* what to do. Whole parts are left out, the least urgent first, to keep within the limit.
*/
function renderMarkdown(report, { limit }) {
	const told = outline(report);
	const findings = told.raised.flatMap((group) => group.findings);
	return within([
		...head(report),
		...findingTable(findings),
		...list$2("What to do next", told.next.flatMap(({ whats }) => whats.map(text))),
		...list$2("Before you decide", cautions(report).map(text)),
		...findings.map((one) => details(report, one)),
		...drawings(report, findings),
		...unchecked(told),
		`Checksums: ${report.inputs.map(({ name, sha256 }) => `${code(foreign(name).foreign)} ${code(sha256)}`).join(", ")}`
	], limit);
}
const bytes = (part) => new TextEncoder().encode(part).length;
function within(parts, limit) {
	const kept = [];
	let size = 0;
	for (const [index, part] of parts.entries()) {
		size += bytes(part) + 2;
		if (size > limit - (index === parts.length - 1 ? 0 : closing)) {
			kept.push(`Left out here for length: ${counted(parts.length - index, "part")}. The full report holds them.`);
			break;
		}
		kept.push(part);
	}
	return `${kept.join("\n\n")}\n`;
}
/** Text that Markdown, HTML inside it, and GitHub's own links and mentions must leave as it is. */
function text(words) {
	return clean(words).replace(/[&<>]/g, (character) => ({
		"&": "&amp;",
		"<": "&lt;",
		">": "&gt;"
	})[character]).replace(/[\\`*_[\]~|!]/g, "\\$&").replace(/[@#]|:(?=\/\/)|www(?=\.)/gi, "$&⁠");
}
/** A stranger's words as code: a fence longer than any run of backticks inside. */
function code(words) {
	const inside = clean(words).replaceAll("|", "\\|");
	const longest = Math.max(0, ...(inside.match(/`+/g) ?? []).map((run) => run.length));
	const fence = "`".repeat(longest + 1);
	const pad = inside.startsWith("`") || inside.endsWith("`") || inside === "" ? " " : "";
	return fence + pad + inside + pad + fence;
}
function sentence(pieces) {
	return pieces.map((piece) => typeof piece === "string" ? text(piece) : code(piece.foreign)).join("");
}
function head(report) {
	return [
		`## ${text(`${gradeWord(report.grade)}. ${gradeMeans(report.grade)}`)}`,
		[
			reachSaid(report),
			damageSaid(report),
			missingSaid(report),
			becauseSaid(report)
		].filter((part) => part !== null).map(text).join(" "),
		`Primary recording: ${code(foreign(report.submission.primary.name).foreign)}`
	];
}
function findingTable(findings) {
	if (findings.length === 0) return [];
	const row = (cells) => `| ${cells.join(" | ")} |`;
	return [[
		row([
			"level",
			"finding",
			"about",
			"number",
			"limits",
			"when"
		]),
		row(Array(6).fill("---")),
		...findings.map((one) => row([
			levelWords[one.finding.level],
			text(one.title),
			text(one.about),
			text(one.value ?? "withheld"),
			text(one.limits ?? ""),
			text(spans(one.finding.stretches, 2))
		]))
	].join("\n")];
}
function list$2(title, items) {
	return items.length === 0 ? [] : [`### ${title}\n\n${items.map((item) => `- ${item}`).join("\n")}`];
}
function details(report, told) {
	const { rule, finding } = told;
	const chart = report.charts.find(({ id }) => id === finding.charts[0]);
	return [
		`### ${text(told.title)}`,
		[told.claim, ...told.remarks].map(sentence).join(" "),
		told.accountedBy === null ? "" : `Accounted for by: ${text(told.accountedBy.title)}.`,
		chart === void 0 ? "" : strip(report, chart),
		rule === null || rule.innocent.length === 0 || told.accountedBy !== null ? "" : `It may be innocent:\n\n${rule.innocent.map((one) => `- ${text(one)}`).join("\n")}`
	].filter((part) => part !== "").join("\n\n");
}
function strip(report, chart) {
	const { strip: row } = picture(chart, {
		id: "",
		marked: [],
		meter: (subject) => meterName(report, subject)
	});
	if (row === null) return "";
	const cells = condense(row.values, sparkCells);
	const shown = extent(cells);
	if (shown === null) return "";
	return `${code(spark(cells, shown, false))} ${text(`${row.label}, ${row.say(shown[0])} to ${row.say(shown[1])}`)}`;
}
function drawings(report, findings) {
	const wanted = new Set(findings.flatMap((one) => one.finding.charts));
	return report.charts.filter((chart) => wanted.has(chart.id)).map(mermaid).filter((drawing) => drawing !== null).slice(0, mostDrawings).map(({ title, source, legend }) => `<details><summary>${title}</summary>\n\n\`\`\`mermaid\n${source}\n\`\`\`\n\n${text(legend)}\n\n</details>`);
}
function unchecked({ unchecked: groups }) {
	return list$2("What could not be checked, and why", groups.map(({ because, checks }) => `${sentence(capital([because]))}: ${checks.map((one) => text(one.question)).join(" ")}`));
}
// src/report/redact.ts
/** Units whose numbers are health data, or give body mass away beside a power in watts. */
const healthUnits = [
	"bpm",
	"kg",
	"W/kg"
];
/** What a rule says that it needs when its numbers rest on heart rate or mass. */
const healthNeeds = /heart|mass|weight/i;
const withheld = "withheld";
/**
* A report fit to publish: codes for names, heart rate and body mass left out of every number, chart and
* sentence, checksums kept so that it can still be matched with its files. Levels and grade stay.
*/
function redact(report) {
	const code = coder(report);
	const healthy = healthRules(report);
	const charts = report.charts.map(redactChart).filter((chart) => chart !== null);
	const kept = new Set(charts.map((chart) => chart.id));
	const { primary, seconds, unreadable } = report.submission;
	return {
		...report,
		inputs: report.inputs.map((input) => ({
			...input,
			name: code(input.name)
		})),
		settings: {
			...report.settings,
			rider: redactRider(report.settings.rider, code),
			redacted: true
		},
		submission: {
			...report.submission,
			primary: redactRecording(primary, code),
			seconds: seconds.map((one) => redactRecording(one, code)),
			unreadable: unreadable.map(({ name, why }) => ({
				name: code(name),
				why: why.replaceAll(name, code(name))
			}))
		},
		findings: report.findings.map((finding) => redactFinding(finding, healthy(finding), kept)),
		measurements: report.measurements.map((one) => redactMeasurement(one, healthy(one))),
		alignment: report.alignment.map(redactAlignment),
		steps: report.steps.map((step) => ({
			...step,
			values: redactValues(step.values)
		})),
		charts
	};
}
/** A file's code is the start of its checksum; a name without one gets its place among the unreadable. */
function coder({ inputs, submission }) {
	const codes = /* @__PURE__ */ new Map();
	for (const { name, sha256 } of [
		...inputs,
		submission.primary,
		...submission.seconds
	]) codes.set(name, `file ${sha256.slice(0, 8)}`);
	return (name) => {
		const known = codes.get(name);
		if (known !== void 0) return known;
		const next = `name ${codes.size + 1}`;
		codes.set(name, next);
		return next;
	};
}
/** Roles stand in for names already and need no code. */
const role = /^(primary|second( \d+)?)$/;
function redactDevice(facts, code) {
	return role.test(facts.name) ? facts : {
		...facts,
		name: code(facts.name)
	};
}
function redactRider({ devices, recordClass }, code) {
	return {
		...recordClass === void 0 ? {} : { recordClass },
		...devices === void 0 ? {} : { devices: devices.map((one) => redactDevice(one, code)) }
	};
}
function redactRecording(one, code) {
	return {
		...one,
		name: code(one.name),
		device: {
			...one.device,
			serial: null
		},
		declared: one.declared === null ? null : redactDevice(one.declared, code),
		defects: one.defects.map((defect) => ({
			...defect,
			values: redactValues(defect.values)
		}))
	};
}
/** Which results rest on health data: by their unit, or by what their rule needs. */
function healthRules(report) {
	const rests = (rule) => rule.needs.some((need) => healthNeeds.test(need));
	const rules = new Set(report.rules.items.filter(rests).map((rule) => rule.id));
	return ({ rule, unit }) => rules.has(rule) || unit !== null && healthUnits.includes(unit);
}
/** Numbers stay unless they are health data; words stay when they are ours. */
function redactValues(values) {
	const shown = Object.entries(values).map(([name, value]) => {
		if (typeof value === "string") return [name, ownWords(value) === null ? withheld : value];
		return [name, typeof value === "object" && healthUnits.includes(value.unit) ? withheld : value];
	});
	return Object.fromEntries(shown);
}
function redactFinding(finding, healthy, kept) {
	const charts = finding.charts.filter((id) => kept.has(id));
	const { summary, limits } = finding;
	if (!healthy) return {
		...finding,
		charts,
		summary: {
			...summary,
			values: redactValues(summary.values)
		}
	};
	const bare = Object.entries(limits).map(([level, limit]) => [level, {
		...limit,
		atLeast: null,
		atMost: null
	}]);
	return {
		...finding,
		value: null,
		interval: null,
		limits: Object.fromEntries(bare),
		expected: null,
		charts,
		summary: {
			...summary,
			values: {}
		}
	};
}
function redactMeasurement(one, healthy) {
	const reason = one.reason === null ? null : {
		...one.reason,
		values: healthy ? {} : redactValues(one.reason.values)
	};
	return healthy ? {
		...one,
		value: null,
		interval: null,
		reason
	} : {
		...one,
		reason
	};
}
function redactAlignment(alignment) {
	return {
		...alignment,
		byChannel: alignment.byChannel.filter(({ channel }) => channel !== "heartRate")
	};
}
/** The chart without heart rate and mass; null when nothing else is in it. */
function redactChart(chart) {
	switch (chart.kind) {
		case "traces": return {
			...chart,
			heartRate: null
		};
		case "close-ups": return {
			...chart,
			closeUps: chart.closeUps.map((one) => ({
				...one,
				heartRate: null
			}))
		};
		case "response": return null;
		case "totals": return {
			...chart,
			rows: chart.rows.filter(({ unit }) => !healthUnits.includes(unit))
		};
		case "traits": return {
			...chart,
			traits: chart.traits.filter(({ trait, unit }) => !healthUnits.includes(unit) && !healthNeeds.test(trait))
		};
		case "ratio":
		case "dependence":
		case "agreement":
		case "meters":
		case "efforts":
		case "curve":
		case "coverage":
		case "comb":
		case "copies":
		case "plateaus":
		case "averaging":
		case "speed-curve": return chart;
	}
}
// src/report/text.ts
/** Narrower than this nothing can be read; wider than this no line is pleasant to read. */
const widths = [40, 100];
const longestSpark = 60;
const codes = {
	bold: [1, 22],
	dim: [2, 22],
	underline: [4, 24]
};
/** The report for a terminal: grade and reach first, then what was found, then what could not be checked. */
function renderText(report, options) {
	const page = new Page(Math.min(widths[1], Math.max(widths[0], Math.floor(options.width))), options);
	const told = outline(report);
	gradeOf(page, report, told);
	for (const { level, findings } of told.raised) {
		page.heading(levelHeadings[level]);
		for (const one of findings) findingOf(page, report, one, level, options.ascii);
	}
	nextOf(page, told);
	fineOf(page, told);
	uncheckedOf(page, told);
	recordingsOf(page, report);
	return page.text();
}
/** Lines of a fixed width. Every text that enters is cleaned here, so that no caller can forget it. */
var Page = class {
	width;
	lines = [];
	colour;
	ascii;
	constructor(width, { colour, ascii }) {
		this.width = width;
		this.colour = colour;
		this.ascii = ascii;
	}
	gap() {
		if (this.lines.length > 0 && this.lines.at(-1) !== "") this.lines.push("");
	}
	heading(text) {
		this.gap();
		this.put(text, { style: "underline" });
	}
	/** A paragraph: wrapped, the first line behind `lead`, the others under its text. */
	put(text, { indent = 0, lead = "", style } = {}) {
		const first = this.safe(lead);
		const hang = " ".repeat(columns(first));
		const pad = " ".repeat(indent);
		for (const [index, line] of wrap(this.safe(text), this.width - indent - hang.length).entries()) {
			const front = index === 0 ? first : hang;
			this.lines.push(`${pad}${front}${this.paint(line, style)}`);
		}
	}
	text() {
		return `${this.lines.map((line) => line.trimEnd()).join("\n")}\n`;
	}
	paint(text, style) {
		if (!this.colour || style === void 0) return text;
		const [on, off] = codes[style];
		return `\u001b[${on}m${text}\u001b[${off}m`;
	}
	safe(text) {
		return this.ascii ? inAscii(clean(text)) : clean(text);
	}
};
const plainer = {
	"\xA0": " ",
	"−": "-",
	"–": "-",
	"—": "-",
	"·": "-",
	"…": "...",
	"“": "\"",
	"”": "\"",
	"‘": "'",
	"’": "'",
	"′": "'",
	"±": "+/-",
	"°": " deg",
	"×": "x"
};
function inAscii(text) {
	return text.replace(/[^\x20-\x7e]/gu, (character) => plainer[character] ?? "?");
}
function gradeOf(page, report, { rests }) {
	page.put(`${gradeWord(report.grade)}. ${gradeMeans(report.grade)}`, { style: "bold" });
	page.put(reachSaid(report));
	for (const said of [
		damageSaid(report),
		missingSaid(report),
		becauseSaid(report)
	]) if (said !== null) page.put(said);
	if (rests.length > 0) page.put(`It rests on: ${rests.map((one) => one.title).join("; ")}.`);
	page.gap();
	for (const caution of cautions(report)) page.put(caution, {
		lead: "· ",
		style: "dim"
	});
}
function findingOf(page, report, told, level, ascii) {
	const { finding, rule } = told;
	page.gap();
	page.put(`${told.title} (${told.about})`, {
		lead: `${told.number}. `,
		style: "bold"
	});
	const indent = 3;
	page.put(plain$1(told.claim), { indent });
	if (told.value !== null) page.put([told.value, told.limits].filter((part) => part !== null).join("; "), { indent });
	for (const id of finding.charts.slice(0, 1)) {
		const chart = report.charts.find((one) => one.id === id);
		if (chart === void 0) continue;
		const { strip } = picture(chart, {
			id,
			marked: finding.stretches,
			meter: (subject) => meterName(report, subject)
		});
		if (strip !== null) stripOf(page, strip, indent, ascii);
	}
	if (finding.stretches.length > 0) page.put(`When: ${spans(finding.stretches, 6)}`, { indent });
	for (const remark of told.remarks) page.put(plain$1(remark), { indent });
	if (finding.remarks.length > 0) page.put(`Mind: ${finding.remarks.join("; ")}`, { indent });
	if (told.accountedBy !== null) page.put(`Accounted for by ${told.accountedBy.number}: ${told.accountedBy.title}.`, { indent });
	if (level === "note" || rule === null || told.accountedBy !== null) return;
	if (rule.innocent.length > 0) page.put(`It may be innocent: ${rule.innocent.join(" ")}`, { indent });
	if (rule.settles.length > 0) page.put(`It would be settled by: ${rule.settles.join(" ")}`, { indent });
	const rate = falseAlarmSaid(rule);
	if (rate !== null) page.put(rate, { indent });
}
/** The evidence in one row, with the ends of its scale. */
function stripOf(page, { label, values, say }, indent, ascii) {
	const cells = condense(values, Math.min(longestSpark, page.width - indent - 2));
	const shown = extent(cells);
	if (shown === null) return;
	page.put(spark(cells, shown, ascii).replaceAll(" ", "\xA0"), { indent });
	page.put(`${label}, ${say(shown[0])} to ${say(shown[1])}`, {
		indent,
		style: "dim"
	});
}
function nextOf(page, { next }) {
	if (next.length === 0) return;
	page.heading("What to do next");
	for (const { whats, settles } of next) for (const what of whats) {
		const which = settles.length === 0 ? "" : ` (settles ${settles.map((one) => one.number).join(", ")})`;
		page.put(`${what}${which}`, { lead: "· " });
	}
}
function fineOf(page, { fine }) {
	if (fine.length === 0) return;
	page.heading("Checked and found fine");
	for (const one of fine) page.put(`${one.question}${aside(one)} ${plain$1(one.claim)}`, { lead: "· " });
}
/** Which recording is meant, where the same check was put to several. */
function aside({ about, several }) {
	return several ? ` (${about})` : "";
}
function uncheckedOf(page, { unchecked }) {
	if (unchecked.length === 0) return;
	page.heading("What could not be checked, and why");
	for (const { because, checks } of unchecked) page.put(`${plain$1(capital([because]))}: ${checks.map((one) => one.question + aside(one)).join(" ")}`, { lead: "· " });
}
function recordingsOf(page, report) {
	const { primary, seconds, unreadable, window } = report.submission;
	page.heading("The recordings");
	for (const one of [primary, ...seconds]) recordingOf(page, report, one);
	for (const { name, why } of unreadable) page.put(`Unreadable second recording “${name}”: ${why}`, { lead: "· " });
	page.put(`Race window, ${window.given ? "as given" : "proposed from the ride"}: ${span(window.stretch)} of the ride.`, { lead: "· " });
}
function recordingOf(page, report, one) {
	const mean = one.meanPower === null ? "" : `; mean ${quantity(one.meanPower, "W")}`;
	page.put(`${plain$1(capital([recordingName(report, one)]))}: “${one.name}”, ${plain$1(deviceSaid(one.device))}; ${clock(one.start)}, ${duration(one.seconds)}${mean}.`, { lead: "· " });
	for (const defect of one.defects) page.put(plain$1(defectSaid(defect)), { indent: 2 });
	const alignment = report.alignment.find(({ subject }) => subject === one.subject);
	if (alignment !== void 0) page.put(`On the primary’s clock. ${alignmentSaid(alignment)}`, { indent: 2 });
	page.put(`Checksum ${one.sha256}`, {
		indent: 2,
		style: "dim"
	});
}
// src/json.ts
/**
* Parses the JSON text of a file; a byte-order mark before it is passed over.
*
* @throws Problem that names the line at which it stops being JSON
*/
function parseJson(text, code, file) {
	const json = text.replace(/^\uFEFF/, "");
	try {
		return JSON.parse(json);
	} catch {
		const offset = offsetOfFault(json);
		const line = json.slice(0, offset).split("\n").length;
		throw new Problem({
			code,
			what: json.slice(offset).trim() === "" ? "this is not JSON: it is empty or breaks off" : "this is not JSON",
			where: `${file} › line ${line}`,
			hint: "Look there and just before for a comma, quotation mark or brace that is missing or too many"
		});
	}
}
/** A string, another scalar, or a mark. */
const token = /(?<string>"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(?<scalar>-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)|(?<mark>[{}[\],:])/y;
/** Where text stops being JSON. The engines' own messages differ from version to version in saying so. */
function offsetOfFault(text) {
	const open = [];
	let state = "value";
	let at = 0;
	for (;;) {
		while (" 	\r\n".includes(text[at] ?? "x")) at++;
		token.lastIndex = at;
		const found = token.exec(text);
		const next = found === null ? null : follow(state, found.groups, open);
		if (next === null) return at;
		state = next;
		at = token.lastIndex;
	}
}
/** The state after a token, or null when the token may not stand there. Keeps `open` up to date. */
function follow(state, { string, scalar, mark }, open) {
	const afterValue = () => open.length === 0 ? "nothing" : ", or end";
	if (state === "value" || state === "value or ]") {
		if (string !== void 0 || scalar !== void 0) return afterValue();
		if (mark === "{" || mark === "[") {
			open.push(mark);
			return mark === "{" ? "name or }" : "value or ]";
		}
	}
	if (string !== void 0) return state === "name" || state === "name or }" ? ":" : null;
	if (mark === ":") return state === ":" ? "value" : null;
	if (mark === ",") return state !== ", or end" ? null : open.at(-1) === "{" ? "name" : "value";
	const closes = mark === "}" ? "{" : mark === "]" ? "[" : null;
	if (closes === null || !(state === ", or end" || state === `${closes === "{" ? "name or }" : "value or ]"}`) || open.at(-1) !== closes) return null;
	open.pop();
	return afterValue();
}
// rules/race.schema.json
var race_schema_default = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	title: "Race",
	description: "The race that a submission is for. Without start and finish the program proposes a stretch of the recording and says so.",
	type: "object",
	additionalProperties: false,
	properties: {
		"$schema": { "type": "string" },
		"start": { "$ref": "#/$defs/instant" },
		"finish": { "$ref": "#/$defs/instant" },
		"kind": {
			"description": "workout: the trainer may hold the power to a target",
			"enum": [
				"race",
				"time trial",
				"workout"
			]
		},
		"required": {
			"description": "what the event requires of a submission; where it is missing the grade is incomplete",
			"type": "array",
			"uniqueItems": true,
			"maxItems": 5,
			"items": { "enum": [
				"power",
				"cadence",
				"heartRate",
				"second recording",
				"history"
			] }
		}
	},
	$defs: { "instant": {
		"description": "date and time with the offset from UTC, for example 2026-03-14T19:00:00+01:00",
		"type": "string",
		"pattern": "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,3})?)?(Z|[+-]\\d{2}:\\d{2})$"
	} }
};
// rules/rider.schema.json
var rider_schema_default = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	title: "Rider",
	description: "What is known about a rider beside the recordings. Nothing is asked that no rule uses, and every field may be left out; a rule that needs it then says that it could not be judged. Health data: keep it where only those see it who decide.",
	type: "object",
	additionalProperties: false,
	properties: {
		"$schema": { "type": "string" },
		"massKg": {
			"description": "body mass in kg",
			"type": "number",
			"minimum": 25,
			"maximum": 250
		},
		"recordClass": {
			"description": "the class whose published records the power is compared with",
			"enum": ["women", "open"]
		},
		"devices": {
			"description": "the meters, as the rider declares them",
			"type": "array",
			"maxItems": 20,
			"items": {
				"type": "object",
				"additionalProperties": false,
				"required": [
					"name",
					"place",
					"sides",
					"tolerancePercent"
				],
				"properties": {
					"name": {
						"description": "which recording it made: primary, second, second 2 and so on, or the name of the file",
						"type": "string",
						"pattern": "\\S",
						"maxLength": 200
					},
					"place": {
						"description": "where it measures",
						"enum": [
							"crank",
							"pedal",
							"hub",
							"trainer"
						]
					},
					"sides": {
						"description": "1: one leg is measured and doubled; 2: both legs, or their sum at the wheel",
						"enum": [1, 2]
					},
					"tolerancePercent": {
						"description": "the maker's claim, plus or minus per cent",
						"type": "number",
						"exclusiveMinimum": 0,
						"maximum": 20
					}
				}
			}
		}
	}
};
// src/schema.ts
/** How much of a stranger's value is quoted back. */
const quoted = 60;
const compiled = /* @__PURE__ */ new WeakMap();
/** Every fault that a schema finds in a value; none when it fits. Each schema is compiled once. */
async function faultsOf(schema, value) {
	let ready = compiled.get(schema);
	if (ready === void 0) {
		ready = compile(schema);
		compiled.set(schema, ready);
	}
	const validate = await ready;
	if (validate(value)) return [];
	const faults = (validate.errors ?? []).map((error) => faultOf(error, value)).filter((fault) => fault !== null);
	const seen = /* @__PURE__ */ new Set();
	return faults.filter((fault) => {
		const key = JSON.stringify(fault);
		return !seen.has(key) && seen.add(key);
	});
}
/** The value, when it fits; otherwise a problem that says every fault. */
async function fitting(schema, value, code, file) {
	const faults = await faultsOf(schema, value);
	if (faults.length > 0) throw problemOf(faults, code, file);
	return value;
}
/** One problem for each fault. */
function problemsOf(faults, code, file) {
	return faults.map(({ path, what, hint }) => new Problem({
		code,
		what,
		where: [file, ...path].join(" › "),
		...hint === void 0 ? {} : { hint }
	}));
}
/** All faults of one file as one problem: the first in full, the rest counted. */
function problemOf(faults, code, file) {
	const [first, ...rest] = problemsOf(faults, code, file);
	if (first === void 0) throw new Error("no fault to make a problem of");
	if (rest.length === 0) return first;
	const others = rest.map((problem) => `${problem.where}: ${problem.message}`).join("; ");
	return new Problem({
		code,
		what: `${first.message}; ${others}`,
		...first.where === void 0 ? {} : { where: first.where },
		...first.hint === void 0 ? {} : { hint: first.hint }
	});
}
async function compile(schema) {
	const { Ajv2020 } = await import("./schemas.js").then((m) => /* @__PURE__ */ __toESM(m.default, 1));
	return new Ajv2020({
		allErrors: true,
		verbose: true,
		discriminator: true,
		allowUnionTypes: true,
		strictTypes: false,
		strictRequired: false,
		validateSchema: false
	}).compile(schema);
}
function faultOf(error, root) {
	const path = placeOf$1(error.instancePath, root);
	const { params } = error;
	const described = describe(error.parentSchema);
	switch (error.keyword) {
		case "additionalProperties": return unknownField(path, String(params.additionalProperty), Object.keys(shapeOf(error)));
		case "required": {
			const field = String(params.missingProperty);
			return {
				path,
				what: `“${field}” is missing${describe(shapeOf(error)[field])}`
			};
		}
		case "enum": return oneOf(path, error.data, params.allowedValues);
		case "discriminator": return oneOf([...path, String(params.tag)], params.tagValue, tagsOf(error));
		case "const": return oneOf(path, error.data, [params.allowedValue]);
		case "type": return {
			path,
			what: `${quote(error.data)} is not ${typeWords(params.type)}${described}`
		};
		case "pattern": return {
			path,
			what: `${quote(error.data)} does not fit${described || ": it must not be blank"}`
		};
		case "minimum":
		case "exclusiveMinimum":
		case "maximum":
		case "exclusiveMaximum": return {
			path,
			what: `${quote(error.data)} is out of range: it must be ${rangeWords(error)}${described}`
		};
		case "minItems":
		case "maxItems":
		case "maxLength":
		case "minLength":
		case "maxProperties":
		case "minProperties": return {
			path,
			what: `${sizeWords(error.keyword, Number(params.limit))}${described}`
		};
		case "uniqueItems": return {
			path,
			what: "the same item stands twice"
		};
		default: return null;
	}
}
function unknownField(path, field, known) {
	const near = nearest(field, known);
	return {
		path: [...path, shorten(field)],
		what: "there is no such field",
		hint: near === null ? `Known here: ${known.filter((name) => name !== "$schema").join(", ")}` : `Did you mean “${near}”?`
	};
}
function oneOf(path, value, allowed) {
	const words = allowed.map(String);
	const near = typeof value === "string" ? nearest(value, words) : null;
	return {
		path,
		what: `${value === void 0 ? "nothing" : quote(value)} stands where one of these must: ${words.join(", ")}`,
		...near === null ? {} : { hint: `Did you mean “${near}”?` }
	};
}
function placeOf$1(pointer, root) {
	const path = [];
	let at = root;
	for (const segment of pointer.split("/").slice(1)) {
		const name = segment.replaceAll("~1", "/").replaceAll("~0", "~");
		path.push(Array.isArray(at) ? String(Number(name) + 1) : shorten(name));
		at = at[name];
	}
	return path;
}
function shapeOf(error) {
	return error.parentSchema?.properties ?? {};
}
function tagsOf(error) {
	return (error.parentSchema?.oneOf ?? []).map((branch) => branch.properties[String(error.params.tag)]?.const ?? "");
}
function describe(schema) {
	const description = schema?.description;
	return typeof description === "string" ? `: ${description}` : "";
}
const typeNames = {
	number: "a number",
	integer: "a whole number",
	string: "a text in quotation marks",
	object: "a group of fields in braces",
	array: "a list in square brackets",
	boolean: "true or false",
	null: "null"
};
function typeWords(type) {
	return (Array.isArray(type) ? type : [type]).map((name) => typeNames[String(name)] ?? String(name)).join(" or ");
}
function rangeWords({ keyword, params }) {
	return `${{
		minimum: "at least",
		exclusiveMinimum: "above",
		maximum: "at most",
		exclusiveMaximum: "below"
	}[keyword]} ${params.limit}`;
}
function sizeWords(keyword, limit) {
	return `there must be ${keyword.startsWith("min") ? "at least" : "at most"} ${limit} ${keyword.endsWith("Items") ? "item" : keyword.endsWith("Length") ? "character" : "field"}${limit === 1 ? "" : "s"}`;
}
function quote(value) {
	return shorten(JSON.stringify(value) ?? String(value));
}
function shorten(text) {
	return text.length > quoted ? `${text.slice(0, quoted)}…` : text;
}
// src/judge/overlay.ts
/** The fields of a file without the note that tells an editor which schema it follows. */
function withoutSchema(file) {
	return Object.fromEntries(Object.entries(file).filter(([name]) => name !== "$schema"));
}
/** Fields whose parts belong together: a change replaces them whole. */
const whole$1 = /* @__PURE__ */ new Set(["source"]);
/**
* Lays a file over the rule of the same id: fields by name, lists and the source as a whole, null takes
* a field away (JSON Merge Patch, RFC 7396). Laying the same file over twice changes nothing more.
*/
function laidOver(shipped, change) {
	const merged = new Map(Object.entries(shipped));
	for (const [name, value] of Object.entries(change)) if (value === null) merged.delete(name);
	else if (isFields$1(value) && !whole$1.has(name)) {
		const before = merged.get(name);
		merged.set(name, laidOver(isFields$1(before) ? before : {}, value));
	} else merged.set(name, value);
	return Object.fromEntries(merged);
}
function isFields$1(value) {
	return value !== null && typeof value === "object" && !Array.isArray(value);
}
// src/judge/facts.ts
/**
* Facts about a rider, from parsed JSON.
*
* @param where the file they stand in, for the sentence
* @throws Problem `facts-wrong` that says everything that is wrong
*/
async function riderFrom(value, where) {
	const rider = withoutSchema(await fitting(rider_schema_default, value, "facts-wrong", where));
	const names = rider.devices?.map((device) => device.name) ?? [];
	const twice = names.findIndex((name, i) => names.indexOf(name) < i);
	if (twice >= 0) throw wrong$1(where, {
		path: [
			"devices",
			`${twice + 1}`,
			"name"
		],
		what: `two devices are named “${names[twice]}”`
	});
	return rider;
}
/** Facts about a race, from parsed JSON. See `riderFrom`. */
async function raceFrom(value, where) {
	const race = withoutSchema(await fitting(race_schema_default, value, "facts-wrong", where));
	for (const field of ["start", "finish"]) {
		const instant = race[field];
		if (instant !== void 0 && !isInstant(instant)) throw wrong$1(where, {
			path: [field],
			what: `${instant} is on no calendar and no clock`
		});
	}
	const { start, finish } = race;
	if (start !== void 0 && finish !== void 0 && Date.parse(finish) <= Date.parse(start)) throw wrong$1(where, {
		path: ["finish"],
		what: "the race finishes before it starts",
		hint: "Look at the dates and at the offsets from UTC"
	});
	return race;
}
/** JavaScript reads 30 February as 2 March: the day must come back as it was written. */
function isInstant(text) {
	if (Number.isNaN(Date.parse(text))) return false;
	const day = text.slice(0, 10);
	return (/* @__PURE__ */ new Date(`${day}T00:00:00Z`)).toISOString().startsWith(day);
}
function wrong$1(where, fault) {
	return problemOf([fault], "facts-wrong", where);
}
// src/cli/inputs.ts
/** Reads a file that the user named. */
function readNamed({ cwd }, file, most, shown = file) {
	return readFileSafely(path.resolve(cwd, file), {
		most,
		shown
	});
}
/** Reads a small text file that the user named, with how the report lists it. */
async function readText(io, file, role, most = limits$37.factsBytes) {
	const { name, bytes } = await readNamed(io, file, most);
	return {
		text: new TextDecoder().decode(bytes),
		input: await inputOf(role, {
			name,
			bytes
		})
	};
}
async function inputOf(role, { name, bytes }) {
	return {
		role,
		name,
		sha256: await sha256(bytes)
	};
}
// src/cli/facts.ts
/** Where facts that no file gave are said to stand. */
const onCommandLine = "options";
async function riderGiven(io, given) {
	const { value, inputs } = await fileGiven(io, given.rider, "rider", riderFrom);
	const named = (given.device ?? []).map(deviceFrom);
	const names = new Set(named.map((device) => device.name));
	const devices = [...(value.devices ?? []).filter((device) => !names.has(device.name)), ...named];
	return {
		facts: await changed(value, present({
			massKg: given.mass,
			recordClass: given.class,
			devices: named.length > 0 ? devices : void 0
		}), riderFrom),
		inputs
	};
}
async function raceGiven(io, given) {
	const { value, inputs } = await fileGiven(io, given.race, "race", raceFrom);
	const { start, finish, kind, require: required } = given;
	return {
		facts: await changed(value, present({
			start,
			finish,
			kind,
			required
		}), raceFrom),
		inputs
	};
}
async function fileGiven(io, file, role, check) {
	if (file === void 0) return {
		value: {},
		inputs: []
	};
	const { text, input } = await readText(io, file, role);
	return {
		value: await check(parseJson(text, "facts-wrong", file), file),
		inputs: [input]
	};
}
/** Checked again only when an option changed something: the schema is not loaded for nothing. */
async function changed(value, changes, check) {
	if (Object.keys(changes).length === 0) return value;
	return check({
		...value,
		...changes
	}, onCommandLine);
}
function present(fields) {
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== void 0));
}
/** "primary=trainer,2,1.5": the last = parts, so that a file's name may hold one. */
function deviceFrom(text) {
	const match = /^(?<name>.+)=(?<place>[^=,]*),(?<sides>[^=,]*),(?<tolerance>[^=,]*)$/.exec(text);
	if (match?.groups === void 0) throw new Problem({
		code: "usage",
		what: `“${text}” does not describe a meter`,
		where: "--device",
		hint: "Give its recording, place, sides and tolerance in per cent, like primary=trainer,2,1.5"
	});
	const { name, place, sides, tolerance } = match.groups;
	return {
		name,
		place,
		sides: Number(sides),
		tolerancePercent: Number(tolerance)
	};
}
// src/cli/io.ts
/** Columns of a terminal; of a pipe, a width that reads well. */
function widthOf({ columns }) {
	return columns !== void 0 && columns > 0 ? columns : 80;
}
/** Colour on a terminal that can show it, unless NO_COLOR says no; FORCE_COLOR says yes to a pipe too. */
function coloured(stream, { NO_COLOR, FORCE_COLOR, TERM }) {
	if (NO_COLOR !== void 0 && NO_COLOR !== "") return false;
	if (FORCE_COLOR !== void 0 && FORCE_COLOR !== "") return FORCE_COLOR !== "0";
	return stream.isTTY === true && TERM !== "dumb";
}
/** Whether a terminal's locale says that it knows ASCII only. No locale at all says nothing. */
function asciiOnly(stream, { LC_ALL, LC_CTYPE, LANG }) {
	const locale = LC_ALL || LC_CTYPE || LANG || "";
	return stream.isTTY === true && locale !== "" && !/utf-?8/i.test(locale);
}
// src/cli/forms.ts
/** Bytes of a report in Markdown: what fits into one comment where code is hosted. */
const commentBytes = 6e4;
/** Columns of a text report in a file. */
const fileColumns = 80;
const forms = [
	"text",
	"json",
	"html",
	"markdown",
	"csv"
];
const endings = {
	".txt": "text",
	".json": "json",
	".html": "html",
	".htm": "html",
	".md": "markdown",
	".csv": "csv"
};
/** The form that a file's ending chooses. */
function formOf(file) {
	const ending = path.extname(file).toLowerCase();
	const form = Object.hasOwn(endings, ending) ? endings[ending] : void 0;
	if (form !== void 0) return form;
	throw new Problem({
		code: "usage",
		what: "the ending of the file must say which form the report takes",
		where: `--out ${file}`,
		hint: `End it with one of ${Object.keys(endings).join(", ")}`
	});
}
/** The report in a form, for a file. */
async function render(report, form) {
	switch (form) {
		case "text": return renderText(report, {
			width: fileColumns,
			colour: false,
			ascii: false
		});
		case "json": return renderJson(report);
		case "html": return renderHtml(report);
		case "markdown": return renderMarkdown(report, { limit: commentBytes });
		case "csv": return renderCsv(report);
	}
}
/** The report in a form, for standard output: text fits itself to the terminal. */
async function renderTo({ stdout, env }, report, form) {
	if (form !== "text") return render(report, form);
	return renderText(report, {
		width: widthOf(stdout),
		colour: coloured(stdout, env),
		ascii: asciiOnly(stdout, env)
	});
}
// src/cli/options.ts
/** Options that mean the same in every command that has them. */
const options$36 = {
	rider: () => new Option("--rider <file>", "facts about the rider: body mass, record class, meters (JSON)"),
	race: () => new Option("--race <file>", "facts about the race: start, finish, kind, what it requires (JSON)"),
	rules: () => new Option("--rules <folder>", "an event's own rules, laid over the shipped ones"),
	mass: () => new Option("--mass <kg>", "the rider's body mass").argParser(number$1),
	class: () => new Option("--class <class>", "whose published records to compare with").choices(["women", "open"]),
	device: () => new Option("--device <meter>", "a meter as declared: recording=place,sides,tolerance in %, like primary=trainer,2,1.5 (repeatable)").argParser(each),
	start: () => new Option("--start <time>", "start of the race, like 2026-03-14T19:00:00+01:00"),
	finish: () => new Option("--finish <time>", "finish of the race"),
	kind: () => new Option("--kind <kind>", "what was ridden").choices([
		"race",
		"time trial",
		"workout"
	]),
	require: () => new Option("--require <list>", "what the event requires, like power,cadence,\"second recording\"").argParser(list$1)
};
/** Collects a repeatable option, and a list with commas alike. */
function each(value, before = []) {
	return [...before, value];
}
function list$1(value, before = []) {
	return [...before, ...value.split(",").map((item) => item.trim())];
}
function number$1(value) {
	const parsed = Number(value);
	if (value.trim() === "" || !Number.isFinite(parsed)) throw new InvalidArgumentError("Give a number.");
	return parsed;
}
// src/history/settings.ts
/** The numbers of compiling a profile, each with its reason. */
const settings = {
	/**
	* Durations (s) at which bests are kept: about nine to a tenfold, round numbers as riders use them,
	* from the sprint to the longest day.
	*/
	durations: [
		1,
		2,
		3,
		5,
		8,
		10,
		15,
		20,
		30,
		45,
		60,
		90,
		120,
		180,
		240,
		300,
		420,
		480,
		600,
		720,
		900,
		1200,
		1500,
		1800,
		2400,
		3600,
		5400,
		7200,
		10800,
		14400,
		21600,
		28800
	],
	/** A ride with less power than this (s) says nothing about what its rider can do. */
	shortestSeconds: 60,
	/**
	* More than any rider reaches for 5 s (W): elite track sprinters average 1791 ± 169 W over a revolution
	* at their best (Gardner et al. 2007, seven men); beyond mean + 6 SD a recording is no evidence.
	*/
	impossibleSprint: 2800,
	impossibleSprintSeconds: 5,
	/** Share of records that lie far from the body of the ride, from which the clock counts as astray. */
	strayShare: .05,
	/** Share of the recorded seconds without power, from which the ride counts as mostly missing. */
	missingShare: .5,
	/** The same watts, above this and for this long (s): a value that hung, not a rider. */
	frozenWatts: 50,
	frozenSeconds: 300,
	/**
	* Control: pedalling minutes in which the 10 s means vary by less than this share of their mean. Riders
	* left to themselves vary by 4 % and more, a trainer in control holds 1–2 % (common practice, no source).
	*/
	controlBlock: 60,
	controlMeans: 10,
	controlVariation: .015,
	/** Below this (W) nobody is pedalling in earnest. */
	pedallingWatts: 60,
	/** Two recordings are of one ride when this share of the shorter one overlaps … */
	duplicateOverlap: .8,
	/** … and from one meter when their bests also agree within this share. */
	duplicateAgreement: .005,
	/** No profile file holds more rides than this: 30 years of daily riding. */
	mostRides: 12e3,
	/** A profile file larger than this (bytes) is refused unread. */
	mostBytes: 33554432
};
// src/history/duplicates.ts
/**
* Rides that were recorded or exported twice: they overlap in time and their bests agree. Which of the two
* stays does not depend on the order of the files: the one that names its device, then the smaller digest.
* Two meters on one ride disagree by more and both stay.
*/
function withoutDuplicates(rides) {
	const kept = [];
	const dropped = [];
	const byTime = [...rides].sort(inOrder);
	for (const ride of byTime) {
		let earlier = kept.length - 1;
		while (earlier >= 0 && kept[earlier].from >= ride.from - 172800) {
			if (sameRide(kept[earlier], ride)) break;
			earlier--;
		}
		const twin = kept[earlier];
		if (twin === void 0 || !sameRide(twin, ride)) kept.push(ride);
		else if (preferred(ride, twin)) {
			kept.splice(earlier, 1);
			dropped.push(twin);
			kept.push(ride);
		} else dropped.push(ride);
	}
	return {
		kept: kept.sort(inOrder),
		dropped
	};
}
/** By date, then by digest: the one order of rides in a profile. */
function inOrder(a, b) {
	return a.from - b.from || a.to - b.to || (a.sha256 < b.sha256 ? -1 : a.sha256 > b.sha256 ? 1 : 0);
}
function sameRide(a, b) {
	const overlap = Math.min(a.to, b.to) - Math.max(a.from, b.from);
	const shorter = Math.min(a.to - a.from, b.to - b.from);
	if (overlap < settings.duplicateOverlap * shorter || overlap <= 0) return false;
	return a.bests.every((watts, k) => {
		const other = b.bests[k] ?? null;
		if (watts === null || other === null) return true;
		return Math.abs(watts - other) <= settings.duplicateAgreement * Math.max(watts, other) + 1;
	});
}
function preferred(a, b) {
	const named = (ride) => Number(ride.device.maker !== null) + Number(ride.device.serial !== null);
	return named(a) - named(b) > 0 || named(a) === named(b) && a.sha256 < b.sha256;
}
// src/history/print.ts
/**
* A profile as text for a file that lives in a repository: rides by date, one a line with its fields in
* one order, so that a new ride is one added line. The same profile always gives the same bytes.
*/
function printProfile(profile) {
	const rides = [...profile.rides].sort(inOrder).map((ride) => JSON.stringify(rideFields$1(ride)));
	const leftOut = [...profile.leftOut].sort(byName).map((file) => JSON.stringify(leftOutFields(file)));
	return [
		"{",
		`  "profileVersion": ${profile.profileVersion},`,
		`  "durations": ${JSON.stringify(profile.durations)},`,
		`  "rides": ${block(rides)},`,
		`  "leftOut": ${block(leftOut)}`,
		"}",
		""
	].join("\n");
}
const block = (lines) => lines.length === 0 ? "[]" : `[\n${lines.map((line) => `    ${line}`).join(",\n")}\n  ]`;
/** One order of fields, whatever order the object was made in. */
function rideFields$1(ride) {
	const { sha256, from, to, device, place, indoors, bests, heartRates, controlled } = ride;
	const { maker, product, serial } = device;
	return {
		from,
		to,
		sha256,
		device: {
			maker,
			product,
			serial
		},
		place,
		indoors,
		controlled,
		bests,
		heartRates
	};
}
const leftOutFields = ({ name, why, flaw, sha256 }) => ({
	name,
	why,
	flaw,
	sha256
});
function byName(a, b) {
	return compare(a.name, b.name) || compare(a.sha256 ?? "", b.sha256 ?? "") || compare(a.why, b.why);
}
const compare = (a, b) => a < b ? -1 : a > b ? 1 : 0;
// src/history/collect.ts
const emptyProfile = {
	profileVersion: 1,
	durations: settings.durations,
	rides: [],
	leftOut: []
};
/**
* What a previous profile knows of files by their digest, so that they need not be read again. A file that
* could not be read is tried again: the program may have learned its format.
*/
function knownBefore(previous) {
	const known = /* @__PURE__ */ new Map();
	if (!sameDurations(previous.durations)) return known;
	for (const { sha256, why, flaw } of previous.leftOut) {
		if (sha256 === void 0 || why === "unreadable") continue;
		known.set(sha256, { leftOut: flaw === void 0 ? { why } : {
			why,
			flaw
		} });
	}
	for (const ride of previous.rides) known.set(ride.sha256, { ride });
	return known;
}
/**
* One profile out of what was known and the files of this run: each ride once, by date. Rides of the
* previous profile whose files are not handed in again stay: a history can be kept up ride by ride.
*/
function collect(previous, taken) {
	const rides = new Map(previous.rides.map((ride) => [ride.sha256, onto(ride, previous.durations)]));
	const leftOut = new Map(previous.leftOut.map((file) => [key(file), file]));
	const names = /* @__PURE__ */ new Map();
	for (const { name, sha256, outcome } of taken) if ("ride" in outcome) {
		names.set(sha256, name);
		rides.set(sha256, outcome.ride);
		leftOut.delete(sha256);
	} else {
		const file = {
			name,
			sha256,
			...outcome.leftOut
		};
		leftOut.set(key(file), file);
	}
	const { kept, dropped } = withoutDuplicates([...rides.values()]);
	for (const { sha256 } of dropped) {
		const file = {
			name: names.get(sha256) ?? sha256.slice(0, 8),
			sha256,
			why: "duplicate"
		};
		leftOut.set(key(file), file);
	}
	return {
		...emptyProfile,
		rides: kept,
		leftOut: [...leftOut.values()].sort(byName)
	};
}
/** Two files of one content are both worth naming; any other file stands under its digest once. */
const key = ({ name, sha256, why }) => why === "duplicate" || sha256 === void 0 ? `${name} ${sha256 ?? ""}` : sha256;
const sameDurations = (durations) => durations.length === settings.durations.length && durations.every((d, k) => d === settings.durations[k]);
/** A ride's bests at today's durations; null at those that its profile did not keep. */
function onto(ride, durations) {
	if (sameDurations(durations)) return ride;
	const at = settings.durations.map((duration) => durations.indexOf(duration));
	const picked = (readings) => at.map((k) => readings[k] ?? null);
	const { heartRates } = ride;
	return {
		...ride,
		bests: picked(ride.bests),
		...heartRates === void 0 ? {} : { heartRates: picked(heartRates) }
	};
}
// src/history/parse.ts
/**
* Reads a profile from its JSON text. Nothing in the text is trusted: every field is checked, unknown
* fields are refused.
*
* @throws Problem `profile-wrong` that names the field
*/
function parseProfile(text) {
	if (text.length > settings.mostBytes) wrong("the profile is too large", "");
	const top = record(parsed(text), "", [
		"profileVersion",
		"durations",
		"rides",
		"leftOut"
	]);
	if (top.profileVersion !== 1) throw new Problem({
		code: "profile-wrong",
		what: "this profile is of a version that this program does not know",
		where: "profileVersion",
		hint: "Compile it again with this program, or update the program"
	});
	const durations = list(top.durations, "durations", 200).map((value, k) => whole(value, `durations › ${k + 1}`, 1, 1e6));
	if (durations.some((duration, k) => k > 0 && duration <= durations[k - 1])) wrong("must rise from one to the next", "durations");
	return {
		profileVersion: 1,
		durations,
		rides: list(top.rides, "rides", settings.mostRides).map((value, i) => ride(value, `rides › ${i + 1}`, durations.length)),
		leftOut: list(top.leftOut, "leftOut", 10 * settings.mostRides).map((value, i) => leftOutFile(value, `leftOut › ${i + 1}`))
	};
}
function parsed(text) {
	try {
		return JSON.parse(text);
	} catch {
		return wrong("this is no JSON", "");
	}
}
function ride(value, where, durations) {
	const field = record(value, where, rideFields);
	const from = number(field.from, `${where} › from`, -0xe8d4a51000, 0xe8d4a51000);
	return {
		sha256: digest(field.sha256, `${where} › sha256`),
		from,
		to: number(field.to, `${where} › to`, from, 0xe8d4a51000),
		device: device(field.device, `${where} › device`),
		...field.place === void 0 ? {} : { place: optional(field.place, (place) => choice(place, `${where} › place`, places)) },
		indoors: optional(field.indoors, (indoors) => boolean(indoors, `${where} › indoors`)),
		bests: readings(field.bests, `${where} › bests`, durations, 1e5),
		...field.heartRates === void 0 ? {} : { heartRates: readings(field.heartRates, `${where} › heartRates`, durations, 300) },
		...field.controlled === void 0 ? {} : { controlled: number(field.controlled, `${where} › controlled`, 0, 1) }
	};
}
const rideFields = [
	"from",
	"to",
	"sha256",
	"device",
	"place",
	"indoors",
	"controlled",
	"bests",
	"heartRates"
];
const places = [
	"crank",
	"pedal",
	"hub",
	"trainer"
];
const reasons = [
	"other sport",
	"no power",
	"unreadable",
	"duplicate",
	"flawed",
	"too short"
];
const flaws = [
	"impossible power",
	"clock astray",
	"mostly missing",
	"frozen power"
];
function leftOutFile(value, where) {
	const field = record(value, where, [
		"name",
		"why",
		"sha256",
		"flaw"
	]);
	return {
		name: string(field.name, `${where} › name`),
		why: choice(field.why, `${where} › why`, reasons),
		...field.sha256 === void 0 ? {} : { sha256: digest(field.sha256, `${where} › sha256`) },
		...field.flaw === void 0 ? {} : { flaw: choice(field.flaw, `${where} › flaw`, flaws) }
	};
}
function device(value, where) {
	const field = record(value, where, [
		"maker",
		"product",
		"serial"
	]);
	const text = (name) => optional(field[name], (given) => string(given, `${where} › ${name}`));
	return {
		maker: text("maker"),
		product: text("product"),
		serial: text("serial")
	};
}
function readings(value, where, length, most) {
	const values = list(value, where, length);
	if (values.length !== length) wrong(`must hold ${length} values, one for each duration`, where);
	return values.map((reading, k) => optional(reading, (given) => number(given, `${where} › ${k + 1}`, 0, most)));
}
function record(value, where, known) {
	if (typeof value !== "object" || value === null || Array.isArray(value)) return wrong("must be an object in braces", where);
	const stray = Object.keys(value).find((name) => !known.includes(name));
	if (stray !== void 0) return wrong(`does not know the field ${JSON.stringify(stray.slice(0, 40))}`, where);
	return value;
}
function list(value, where, most) {
	if (!Array.isArray(value)) return wrong("must be a list in square brackets", where);
	return value.length > most ? wrong(`must hold at most ${most} entries`, where) : value;
}
function number(value, where, least, most) {
	return typeof value === "number" && value >= least && value <= most ? value : wrong(`must be a number from ${least} to ${most}`, where);
}
function whole(value, where, least, most) {
	const given = number(value, where, least, most);
	return Number.isInteger(given) ? given : wrong("must be a whole number", where);
}
function string(value, where) {
	return typeof value === "string" && value.length <= 1e3 ? value : wrong("must be a text of at most 1000 characters", where);
}
function digest(value, where) {
	return typeof value === "string" && /^[0-9a-f]{64}$/.test(value) ? value : wrong("must be a SHA-256 digest of 64 hex digits", where);
}
function boolean(value, where) {
	return typeof value === "boolean" ? value : wrong("must be true, false or null", where);
}
function choice(value, where, known) {
	return known.find((name) => name === value) ?? wrong(`must be one of ${known.map((name) => `"${name}"`).join(", ")}`, where);
}
function optional(value, read) {
	return value === null || value === void 0 ? null : read(value);
}
function wrong(what, where) {
	throw new Problem({
		code: "profile-wrong",
		what,
		...where === "" ? {} : { where },
		hint: "Compile the profile again from the recordings"
	});
}
// src/history/control.ts
/**
* Share of the pedalling minutes (0–1) in which power stayed so even that a trainer, not the rider, must
* have set it. Such minutes show what was asked of the rider, not what they could have done.
*/
function controlledShare(power) {
	let pedalling = 0;
	let controlled = 0;
	for (let from = 0; from + settings.controlBlock <= power.length; from += settings.controlBlock) {
		const variation = variationOfMeans(power, from);
		if (variation === null) continue;
		pedalling++;
		if (variation < settings.controlVariation) controlled++;
	}
	return pedalling === 0 ? 0 : controlled / pedalling;
}
/** SD of the short means as a share of their mean; null where the block is not pedalled through. */
function variationOfMeans(power, from) {
	const means = settings.controlBlock / settings.controlMeans;
	let sum = 0;
	let squares = 0;
	for (let k = 0; k < means; k++) {
		let short = 0;
		for (let i = 0; i < settings.controlMeans; i++) short += power[from + k * settings.controlMeans + i];
		const mean = short / settings.controlMeans;
		if (!(mean >= settings.pedallingWatts)) return null;
		sum += mean;
		squares += mean * mean;
	}
	const mean = sum / means;
	return Math.sqrt(Math.max(0, (squares - sum * mean) / (means - 1))) / mean;
}
// src/history/past-ride.ts
/** What a profile remembers of one ride. The series must have power. */
function pastRide(series, place) {
	const power = series.channels.power;
	const best = meanMaximal(power, settings.durations);
	const heartRate = series.channels.heartRate;
	return {
		sha256: series.recording.sha256,
		from: series.start,
		to: series.start + series.length - 1,
		device: series.recording.device,
		place,
		indoors: series.recording.indoors,
		bests: Array.from(best.watts, (watts) => Number.isNaN(watts) ? null : Math.round(watts * 10) / 10),
		...heartRate === void 0 ? {} : { heartRates: settings.durations.map((duration, k) => meanOf(heartRate, best.from[k], duration)) },
		controlled: Math.round(controlledShare(power) * 100) / 100
	};
}
/** Mean (bpm, whole) over the window where at least half of it was recorded; null otherwise. */
function meanOf(heartRate, from, seconds) {
	if (from < 0) return null;
	let sum = 0;
	let count = 0;
	for (let i = from; i < from + seconds; i++) {
		const bpm = heartRate[i];
		if (!(bpm > 0)) continue;
		sum += bpm;
		count++;
	}
	return count * 2 < seconds ? null : Math.round(sum / count);
}
// src/history/place.ts
/**
* Where the meter of a past recording sits, if the rider declared it: a device's name is matched with the
* file's name or with maker and product as the file states them.
*/
function placeOf(name, device, declared) {
	const stated = [device.maker, device.product].filter((part) => part !== null).join(" ");
	const same = (text) => text.toLowerCase();
	return declared.find((facts) => same(facts.name) === same(name) || stated !== "" && same(facts.name) === same(stated))?.place ?? null;
}
// src/history/sift.ts
/** Whether a sport is cycling under the rider's own power; a file that states none is taken at its word. */
function isCycling(sport) {
	if (sport === null) return true;
	return /cycl|bik|ride/.test(sport) && !/^e[ _-]?bik|electric|motor/.test(sport);
}
/** Why a recording does not belong in a profile before it is even laid on a grid; null when it may. */
function unfit(recording) {
	if (!isCycling(recording.sport)) return "other sport";
	return recording.channels.power?.some((watts) => watts > 0) ? null : "no power";
}
/** Whether the ride holds too little power to say anything. */
function tooShort(series) {
	return count(series.channels.power, (watts) => watts > 0) < settings.shortestSeconds;
}
/** What makes this recording no evidence of what its rider can do; null where nothing does. */
function flaw(series, steps) {
	const power = series.channels.power;
	if (meanMaximal(power, [settings.impossibleSprintSeconds]).watts[0] > settings.impossibleSprint) return "impossible power";
	if (stray(steps) > settings.strayShare * series.recording.time.length) return "clock astray";
	const recorded = count(series.state, (state) => state <= 1);
	if (recorded - count(power, (watts) => !Number.isNaN(watts)) > settings.missingShare * recorded) return "mostly missing";
	return longestFreeze(power) >= settings.frozenSeconds ? "frozen power" : null;
}
/** Records dropped because they lie far from the body of the ride, as the steps log them. */
function stray(steps) {
	const dropped = steps.find((step) => step.id === "far-records-dropped")?.values.count;
	return typeof dropped === "object" ? dropped.value : 0;
}
function longestFreeze(power) {
	const repeats = stretchesWhere(1, power.length, (i) => power[i] === power[i - 1] && power[i] > settings.frozenWatts, settings.frozenSeconds - 1);
	return repeats.length === 0 ? 0 : longestLength(repeats) + 1;
}
function count(column, holds) {
	let counted = 0;
	for (const value of column) if (holds(value)) counted++;
	return counted;
}
// src/profile.ts
/**
* Past recordings → profile: read → normalise → sift → bests. The second table of contents.
*/
/**
* Compiles a rider's mean-maximal power history. No file stops it: what cannot serve is left out and
* counted with its reason. The order of the files does not change the rides.
*/
async function compileProfile(files, options = {}) {
	const previous = options.previous ?? emptyProfile;
	const known = knownBefore(previous);
	const seen = /* @__PURE__ */ new Set();
	const taken = [];
	let index = 0;
	for await (const file of files) {
		options.onFile?.(file.name, index++);
		const digest = await sha256(file.bytes);
		const outcome = seen.has(digest) ? left("duplicate") : known.get(digest) ?? await take(file, options.devices ?? []);
		seen.add(digest);
		taken.push({
			name: file.name,
			sha256: digest,
			outcome
		});
	}
	return collect(previous, taken);
}
const left = (why) => ({ leftOut: { why } });
async function take(file, devices) {
	try {
		const recording = await read(file);
		const why = unfit(recording);
		if (why !== null) return left(why);
		const { series, steps } = normalise(recording, file.name);
		if (tooShort(series)) return left("too short");
		const found = flaw(series, steps);
		if (found !== null) return { leftOut: {
			why: "flawed",
			flaw: found
		} };
		return { ride: pastRide(series, placeOf(file.name, recording.device, devices)) };
	} catch (error) {
		if (error instanceof Problem) return left(whyRefused(error));
		throw error;
	}
}
function whyRefused(problem) {
	if (problem.code === "no-power") return "no power";
	return problem.code === "wrong-sport" ? "other sport" : "unreadable";
}
// src/cli/past-rides.ts
/** A rider's history as the user names it: a folder of recordings, a ZIP of them, or a profile. */
async function historyGiven(io, named, options) {
	if (path.extname(named).toLowerCase() === ".json") return profileGiven(io, named);
	const inputs = [];
	const files = await isFolder(path.resolve(io.cwd, named)) ? inFolder(path.resolve(io.cwd, named), inputs, options) : inArchive(await readNamed(io, named, limits$37.archiveBytes), inputs, options);
	const { devices, previous, onFile } = options;
	return {
		profile: await compileProfile(files, {
			onFile,
			...devices === void 0 ? {} : { devices },
			...previous === void 0 ? {} : { previous }
		}),
		inputs
	};
}
/** A compiled profile from its file. */
async function profileGiven(io, file) {
	const { text, input } = await readText(io, file, "profile", limits$37.profileBytes);
	try {
		return {
			profile: parseProfile(text),
			inputs: [input]
		};
	} catch (error) {
		throw error instanceof Problem ? error.at(file) : error;
	}
}
async function isFolder(place) {
	try {
		return (await stat(place)).isDirectory();
	} catch {
		return false;
	}
}
/** Profiles and facts may lie beside the recordings: JSON is passed over. */
async function* inFolder(folder, inputs, options) {
	for (const found of await filesBelow(folder)) {
		if (found.name.toLowerCase().endsWith(".json")) continue;
		let bytes;
		try {
			({bytes} = await readFileSafely(found.path, {
				most: limits$37.recordingBytes,
				root: folder,
				shown: found.name
			}));
		} catch (error) {
			if (!(error instanceof Problem)) throw error;
			options.onTrouble(sentence$1(error));
			continue;
		}
		const file = {
			name: found.name,
			bytes
		};
		if (isArchive(bytes)) yield* inArchive(file, inputs, options);
		else {
			inputs.push(await inputOf("history", file));
			yield file;
		}
	}
}
async function* inArchive(archive, inputs, { onTrouble }) {
	inputs.push(await inputOf("history", archive));
	for await (const member of openArchive(archive)) if (member instanceof Problem) onTrouble(sentence$1(member));
	else yield member;
}
// src/cli/progress.ts
/** A run shorter than this shows no progress, ms. */
const patience = 400;
const clearLine = "\r\x1B[2K";
/** One line on standard error that replaces itself; nothing at all where that is no terminal. */
function progressOn({ stderr }) {
	if (stderr.isTTY !== true) return {
		now: () => {},
		clear: () => {}
	};
	const began = performance.now();
	let shown = false;
	return {
		now(what) {
			if (performance.now() - began < patience) return;
			shown = true;
			const room = Math.max(10, (stderr.columns ?? 80) - 2);
			stderr.write(`${clearLine}${what.slice(0, room)}…`);
		},
		clear() {
			if (shown) stderr.write(clearLine);
			shown = false;
		}
	};
}
// rules/grades.schema.json
var grades_schema_default = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	title: "Grades",
	description: "How findings make the grade of a submission: refer if any finding is, else query, else incomplete, else clear.",
	type: "object",
	additionalProperties: false,
	required: ["queriesThatRefer", "why"],
	properties: {
		"$schema": { "type": "string" },
		"queriesThatRefer": {
			"description": "how many queries, each from another family of rules, make a referral (2 to 4); null: queries never add up",
			"type": ["integer", "null"],
			"minimum": 2,
			"maximum": 4
		},
		"why": {
			"description": "the reason, as a sentence",
			"type": "string",
			"pattern": "\\S",
			"maxLength": 600
		}
	}
};
// rules/rule.schema.json
var rule_schema_default = {
	$schema: "https://json-schema.org/draft/2020-12/schema",
	title: "Rule",
	description: "A complete rule: which measure it puts to a submission, where its limits lie, and what it says. Lies in rules/<id>.rule.json. The tunable numbers of the program stand here and nowhere else.",
	$ref: "#/$defs/fields",
	required: [
		"id",
		"title",
		"family",
		"question",
		"measure",
		"subjects",
		"options",
		"needs",
		"limits",
		"highest",
		"ceilings",
		"claims",
		"innocent",
		"settles",
		"source",
		"examples"
	],
	properties: {
		"limits": { "additionalProperties": { "required": ["of", "end"] } },
		"claims": { "required": ["fine"] }
	},
	$defs: {
		"fields": {
			"type": "object",
			"additionalProperties": false,
			"required": ["id"],
			"properties": {
				"$schema": { "type": "string" },
				"id": {
					"description": "a noun for the fault, in small letters with hyphens, the same as the file's name before .rule.json",
					"type": "string",
					"pattern": "^[a-z][a-z0-9]*(-[a-z0-9]+)*$",
					"maxLength": 60
				},
				"title": {
					"description": "what a reader sees first, a few words",
					"$ref": "#/$defs/words"
				},
				"family": {
					"description": "where the evidence comes from; findings of one family never add up",
					"enum": [
						"recording",
						"trace",
						"agreement",
						"physiology"
					]
				},
				"question": {
					"description": "the question in one sentence",
					"$ref": "#/$defs/words"
				},
				"measure": {
					"description": "the id of the measure that answers it",
					"type": "string",
					"maxLength": 60
				},
				"subjects": {
					"description": "what the question is put to",
					"enum": [
						"primary",
						"recordings",
						"pairs",
						"rider",
						"submission"
					]
				},
				"options": {
					"description": "the measure's tunable numbers: every one that it declares, and no other",
					"type": "object",
					"maxProperties": 60,
					"additionalProperties": {
						"type": ["number", "array"],
						"items": { "type": "number" },
						"maxItems": 100
					}
				},
				"needs": {
					"description": "the evidence it cannot do without",
					"$ref": "#/$defs/sentences"
				},
				"limits": {
					"description": "one limit for each level; null takes a shipped limit away",
					"type": "object",
					"additionalProperties": false,
					"properties": {
						"note": { "$ref": "#/$defs/limit" },
						"query": { "$ref": "#/$defs/limit" },
						"refer": { "$ref": "#/$defs/limit" }
					}
				},
				"highest": {
					"description": "the highest level that the rule may make; incomplete: it can only say that something is missing",
					"enum": [
						"note",
						"query",
						"refer",
						"incomplete"
					]
				},
				"ceilings": {
					"description": "circumstances that hold the level down",
					"type": "array",
					"maxItems": 20,
					"items": {
						"type": "object",
						"additionalProperties": false,
						"required": [
							"when",
							"level",
							"why"
						],
						"properties": {
							"when": {
								"description": "a circumstance that the measure may report",
								"type": "string",
								"maxLength": 200
							},
							"level": {
								"description": "the highest level then",
								"enum": [
									"none",
									"note",
									"query"
								]
							},
							"why": {
								"description": "the reason, as a sentence",
								"$ref": "#/$defs/words"
							}
						}
					}
				},
				"claims": {
					"description": "one sentence for each outcome; {value}, {low}, {high}, {limit} and the measure's own details are filled in",
					"type": "object",
					"additionalProperties": false,
					"properties": {
						"above": {
							"description": "beyond an \"at least\" limit",
							"$ref": "#/$defs/words"
						},
						"below": {
							"description": "beyond an \"at most\" limit",
							"$ref": "#/$defs/words"
						},
						"fine": {
							"description": "within the limits",
							"$ref": "#/$defs/words"
						}
					}
				},
				"innocent": {
					"description": "innocent explanations, the likeliest first",
					"$ref": "#/$defs/sentences",
					"minItems": 1
				},
				"settles": {
					"description": "what would settle it, the least burdensome first",
					"$ref": "#/$defs/sentences",
					"minItems": 1
				},
				"source": { "$ref": "#/$defs/source" },
				"examples": {
					"description": "measurements with the level that they must get; judged whenever the rule is loaded",
					"type": "array",
					"minItems": 2,
					"maxItems": 60,
					"items": {
						"type": "object",
						"additionalProperties": false,
						"required": [
							"value",
							"interval",
							"count",
							"level"
						],
						"properties": {
							"value": { "type": "number" },
							"interval": {
								"description": "its low and its high end",
								"type": "array",
								"minItems": 2,
								"maxItems": 2,
								"items": { "type": "number" }
							},
							"count": {
								"type": "number",
								"minimum": 0
							},
							"expected": {
								"description": "where honest submissions lie: by the tolerances declared, and as found in the field",
								"type": "object",
								"additionalProperties": false,
								"required": ["declared", "field"],
								"properties": {
									"declared": { "$ref": "#/$defs/range" },
									"field": { "$ref": "#/$defs/range" }
								}
							},
							"circumstances": {
								"type": "array",
								"maxItems": 20,
								"items": {
									"type": "string",
									"maxLength": 200
								}
							},
							"level": { "enum": [
								"none",
								"note",
								"query",
								"refer"
							] }
						}
					}
				},
				"explains": {
					"description": "ids of rules whose findings about the same subject this one accounts for",
					"type": "array",
					"maxItems": 20,
					"uniqueItems": true,
					"items": {
						"type": "string",
						"maxLength": 60
					}
				},
				"off": {
					"description": "why this event does not ask the question; switches the rule off",
					"$ref": "#/$defs/words"
				}
			}
		},
		"words": {
			"type": "string",
			"pattern": "\\S",
			"maxLength": 600
		},
		"sentences": {
			"type": "array",
			"maxItems": 20,
			"items": { "$ref": "#/$defs/words" }
		},
		"range": {
			"type": "object",
			"additionalProperties": false,
			"required": ["centre", "spread"],
			"properties": {
				"centre": { "type": "number" },
				"spread": {
					"description": "one standard deviation, above 0",
					"type": "number",
					"exclusiveMinimum": 0
				}
			}
		},
		"limit": {
			"description": "the level holds from this number on: \"at least\" upwards, \"at most\" downwards",
			"type": ["object", "null"],
			"additionalProperties": false,
			"properties": {
				"at least": { "type": ["number", "null"] },
				"at most": { "type": ["number", "null"] },
				"of": {
					"description": "value: the numbers are in the measurement's own unit; a spread: multiples of the honest spread, counted from where honest submissions lie",
					"enum": [
						"value",
						"declared spread",
						"field spread"
					]
				},
				"end": {
					"description": "cautious: the end of the interval that is nearer to innocence must pass; estimate: the value itself",
					"enum": ["cautious", "estimate"]
				}
			}
		},
		"source": {
			"description": "where the limits come from",
			"type": "object",
			"required": ["kind"],
			"discriminator": { "propertyName": "kind" },
			"oneOf": [
				{
					"additionalProperties": false,
					"required": ["kind", "citation"],
					"properties": {
						"kind": { "const": "published" },
						"citation": { "$ref": "#/$defs/words" }
					}
				},
				{
					"additionalProperties": false,
					"required": ["kind", "note"],
					"properties": {
						"kind": { "const": "common practice" },
						"note": { "$ref": "#/$defs/words" }
					}
				},
				{
					"additionalProperties": false,
					"required": ["kind", "note"],
					"properties": {
						"kind": { "const": "from memory" },
						"note": { "$ref": "#/$defs/words" }
					}
				},
				{
					"additionalProperties": false,
					"required": [
						"kind",
						"command",
						"falseAlarm",
						"note"
					],
					"properties": {
						"kind": { "const": "measured" },
						"command": {
							"description": "the command that measures it again",
							"$ref": "#/$defs/words"
						},
						"falseAlarm": {
							"description": "share of honest submissions that reach the level by this rule",
							"type": "object",
							"additionalProperties": false,
							"required": ["query", "refer"],
							"properties": {
								"query": { "$ref": "#/$defs/share" },
								"refer": { "$ref": "#/$defs/share" }
							}
						},
						"note": { "$ref": "#/$defs/words" }
					}
				}
			]
		},
		"share": {
			"type": "number",
			"minimum": 0,
			"maximum": 1
		}
	}
};
// src/judge/canonical.ts
/**
* JSON text with the keys of every object in order and no spaces: the same value gives the same text,
* however its file was laid out.
*/
function canonical(value) {
	return JSON.stringify(value, (_, part) => part !== null && typeof part === "object" && !Array.isArray(part) ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => a < b ? -1 : 1)) : part);
}
// src/judge/check/claims.ts
const fixed = [
	"value",
	"low",
	"high",
	"limit"
];
/** Every outcome has its sentence, and every sentence can be filled in. */
function claimFaults(rule, details) {
	const limits = Object.values(rule.limits);
	const missing = [{
		side: "above",
		bound: "at least"
	}, {
		side: "below",
		bound: "at most"
	}].filter(({ side, bound }) => rule.claims[side] === void 0 && limits.some((l) => l[bound] !== void 0)).map(({ side, bound }) => ({
		path: ["claims"],
		what: `“${side}” is missing: the rule has an “${bound}” limit, so it needs the sentence that says so`
	}));
	const unfilled = Object.entries(rule.claims).flatMap(([name, claim]) => placeholdersOf(claim).filter((placeholder) => !details.has(placeholder) && !fixed.includes(placeholder)).map((placeholder) => {
		const known = [...fixed, ...details];
		const near = nearest(placeholder, known);
		return {
			path: ["claims", name],
			what: `nothing fills in {${placeholder}}`,
			hint: near === null ? `Known here: ${known.map((word) => `{${word}}`).join(" ")}` : `Did you mean {${near}}?`
		};
	}));
	return [...missing, ...unfilled];
}
/** The names in braces, without the four that every rule has. */
function detailsOf(rule) {
	return Object.values(rule.claims).flatMap(placeholdersOf).filter((name) => !fixed.includes(name));
}
/** `{name}`, `{name:unit}`, `{name:at}` or `{name|one|many}`; whatever else stands in braces is taken whole. */
function placeholdersOf(claim) {
	return Array.from(claim.matchAll(/\{([^{}]*)\}/g), ([, inside]) => inside.split(/[:|]/)[0]);
}
// src/judge/check/examples.ts
/** The examples of a rule, judged by its own limits, get the levels that they are listed with. */
function exampleFaults(rule) {
	return rule.examples.flatMap((example, i) => {
		const place = `${i + 1}`;
		const path = ["examples", place];
		const [low, high] = example.interval;
		if (low > example.value || high < example.value) return [{
			path: [...path, "interval"],
			what: `[${low}, ${high}] does not hold the value ${example.value}`
		}];
		if (!canCompare(rule, example)) return [{
			path,
			what: "the limits are multiples of a spread, so the example must say what is “expected”"
		}];
		const { level } = verdictOf(rule, example);
		if (level === example.level) return [];
		return [{
			path,
			what: `example ${place} is listed as ${example.level}, but the limits now make it ${level}`,
			hint: "Change the example too, or the limit back"
		}];
	});
}
// src/judge/check/limits.ts
/** The limits of a rule make sense together: each can act, none stands in another's way. */
function limitFaults(rule) {
	const set = raisedLevels.flatMap((level) => {
		const limit = rule.limits[level];
		return limit === void 0 ? [] : [{
			level,
			limit
		}];
	});
	if (set.length === 0) return [{
		path: ["limits"],
		what: "a rule without a limit has no effect",
		hint: "To stop asking the question, give the reason in “off”"
	}];
	return [
		...set.flatMap(({ level, limit }) => singleFaults(level, limit)),
		...set.flatMap((lower, i) => set.slice(i + 1).flatMap((upper) => orderFaults(lower, upper))),
		...highestFaults(rule, set.map(({ level }) => level)),
		...ceilingFaults$1(rule)
	];
}
function singleFaults(level, limit) {
	const path = ["limits", level];
	const { "at least": atLeast, "at most": atMost } = limit;
	if (atLeast === void 0 && atMost === void 0) return [{
		path,
		what: "a limit without “at least” or “at most” has no effect"
	}];
	const faults = [];
	if (atLeast !== void 0 && atMost !== void 0 && atLeast <= atMost) faults.push({
		path,
		what: `every value is at least ${atLeast} or at most ${atMost}: the limit would always act`,
		hint: "“at least” must lie above “at most”"
	});
	if (level === "refer" && limit.of === "declared spread") faults.push({
		path: [...path, "of"],
		what: "a declared tolerance may tighten a query, but a referral goes by the spread found in the field",
		hint: "Write “field spread”"
	});
	return faults;
}
/** Limits in different measures (value, declared spread, field spread) cannot be put in order here. */
function orderFaults(lower, upper) {
	if (lower.limit.of !== upper.limit.of) return [];
	return ["at least", "at most"].flatMap((bound) => boundFaults(bound, lower, upper));
}
function boundFaults(bound, lower, upper) {
	const low = lower.limit[bound];
	const up = upper.limit[bound];
	if (low === void 0 || up === void 0) return [];
	const path = [
		"limits",
		upper.level,
		bound
	];
	const strictness = bound === "at least" ? up - low : low - up;
	const direction = bound === "at least" ? "above" : "below";
	if (strictness < 0) return [{
		path,
		what: `${upper.level} (${bound} ${up}) is looser than ${lower.level} (${bound} ${low})`,
		hint: `The limit of the higher level must lie ${direction} the other`
	}];
	if (upper.limit.end === "estimate" && lower.limit.end === "cautious") return [{
		path: [
			"limits",
			upper.level,
			"end"
		],
		what: `${upper.level} asks only for the estimate while ${lower.level} asks for the cautious end`,
		hint: "The higher level must not be the easier one"
	}];
	if (strictness === 0 && upper.limit.end === lower.limit.end) return [{
		path: [
			"limits",
			lower.level,
			bound
		],
		what: `it has no effect: ${upper.level} begins at the same value (${bound} ${low})`,
		hint: `Move one of the two, or take one away with null`
	}];
	return [];
}
function highestFaults({ highest }, set) {
	const top = highest === "incomplete" ? "note" : highest;
	const beyond = set.filter((level) => rank(level) > rank(top));
	if (beyond.length > 0) return beyond.map((level) => ({
		path: ["limits", level],
		what: `the rule's highest level is ${highest}, so it cannot have a limit for ${level}`,
		hint: `Raise “highest”, or take the limit away: "limits": { "${level}": null }`
	}));
	if (set.includes(top)) return [];
	return [{
		path: ["highest"],
		what: `it has no effect: no limit makes ${top === highest ? top : `a ${top}`}`,
		hint: `Give “limits” a ${top}, or lower “highest” to ${set.at(-1)}`
	}];
}
function ceilingFaults$1({ ceilings, highest }) {
	const top = rank(highest === "incomplete" ? "note" : highest);
	return ceilings.flatMap(({ level }, i) => rank(level) < top ? [] : [{
		path: ["ceilings", `${i + 1}`],
		what: `it has no effect: the rule never goes beyond ${highest} anyway`
	}]);
}
// src/judge/check/measure.ts
/** Which kind of measure may answer a question put to these subjects. */
const kinds = {
	primary: "recording",
	recordings: "recording",
	pairs: "pair",
	rider: "rider",
	submission: "submission"
};
/** The measure exists, looks at what the rule is put to, and gets the options that it declares. */
function measureFaults(rule, measures) {
	const measure = measures.get(rule.measure);
	if (measure === void 0) {
		const near = nearest(rule.measure, [...measures.keys()]);
		return [{
			path: ["measure"],
			what: `there is no measure “${rule.measure}”`,
			hint: near === null ? "wattassay rules lists every rule with its measure" : `Did you mean “${near}”?`
		}];
	}
	return [
		...subjectFaults(rule, measure),
		...optionFaults(rule, measure),
		...ceilingFaults(rule, measure)
	];
}
function subjectFaults(rule, measure) {
	if (kinds[rule.subjects] === measure.of) return [];
	const names = Object.entries(kinds).filter(([, kind]) => kind === measure.of).map(([subjects]) => subjects).join(" or ");
	return [{
		path: ["subjects"],
		what: `“${rule.subjects}” does not fit the measure ${measure.id}, which looks at a ${measure.of}`,
		hint: `Write ${names}`
	}];
}
function optionFaults(rule, measure) {
	const faults = [];
	const declared = Object.keys(measure.options);
	for (const [name, value] of Object.entries(rule.options)) {
		const spec = Object.hasOwn(measure.options, name) ? measure.options[name] : void 0;
		if (spec === void 0) {
			const near = nearest(name, declared);
			const known = declared.length === 0 ? "it has none" : `it has ${declared.join(", ")}`;
			faults.push({
				path: ["options", name],
				what: `the measure ${measure.id} has no such option`,
				hint: near === null ? `Known: ${known}` : `Did you mean “${near}”?`
			});
		} else if (Array.isArray(value) !== spec.list) {
			const wanted = spec.list ? "a list of numbers in square brackets" : "one number";
			faults.push({
				path: ["options", name],
				what: `it must be ${wanted}: ${spec.what}`
			});
		}
	}
	for (const name of declared) {
		if (Object.hasOwn(rule.options, name)) continue;
		faults.push({
			path: ["options"],
			what: `“${name}” is missing: ${measure.options[name].what}`
		});
	}
	return faults;
}
function ceilingFaults(rule, measure) {
	const known = Object.keys(measure.circumstances);
	return [...rule.ceilings.map(({ when }, i) => ({
		when,
		path: [
			"ceilings",
			`${i + 1}`,
			"when"
		]
	})), ...rule.examples.flatMap(({ circumstances = [] }, i) => circumstances.map((when) => ({
		when,
		path: [
			"examples",
			`${i + 1}`,
			"circumstances"
		]
	})))].filter(({ when }) => !known.includes(when)).map(({ when, path }) => {
		const near = nearest(when, known);
		const list = known.length === 0 ? "none" : known.join(", ");
		return {
			path,
			what: `the measure ${measure.id} never reports the circumstance “${when}”`,
			hint: near === null ? `It reports: ${list}` : `Did you mean “${near}”?`
		};
	});
}
// src/judge/load.ts
/** The same shapes, for a file that may leave out what it does not change. */
const changeSchema = {
	$defs: rule_schema_default.$defs,
	$ref: "#/$defs/fields"
};
const ruleEnding = ".rule.json";
const gradesName = "grades.json";
/**
* Lays the files of an event's folder over the ground rules. A file changes the rule of its id, switches
* it off, or, under a new id, adds a complete rule; `grades.json` replaces the grades. The rules that a
* file touched are checked in full; the ground stands as it is.
*/
async function loadRules(ground, files, name) {
	const rules = new Map(ground.rules.map((rule) => [rule.id, rule]));
	const problems = [];
	const seen = /* @__PURE__ */ new Set();
	let grades = ground.grades;
	for (const file of files) try {
		if (file.name === gradesName) {
			grades = await gradesFrom(file);
			continue;
		}
		const rule = await ruleFrom(file, ground, seen);
		seen.add(rule.id);
		rules.set(rule.id, rule);
	} catch (error) {
		if (!(error instanceof AggregateError)) throw error;
		problems.push(...error.errors);
	}
	if (problems.length > 0) return {
		set: null,
		problems
	};
	const effective = [...rules.values()];
	return {
		set: {
			name,
			sha256: await sha256(new TextEncoder().encode(canonical({
				rules: effective,
				grades
			}))),
			rules: effective,
			grades,
			overlaid: files.map(({ name, text }) => ({
				file: name,
				text
			}))
		},
		problems: []
	};
}
/** Everything that is wrong with a complete rule, measured against what measures there are. */
async function ruleFaults(rule, { rules, measures }) {
	const shape = await faultsOf(rule_schema_default, rule);
	if (shape.length > 0) return shape;
	const sound = rule;
	const known = new Map(measures.map((measure) => [measure.id, measure]));
	const alike = rules.filter((other) => other.measure === sound.measure);
	return [
		...measureFaults(sound, known),
		...limitFaults(sound),
		...known.has(sound.measure) ? claimFaults(sound, new Set(alike.flatMap(detailsOf))) : [],
		...exampleFaults(sound)
	];
}
async function ruleFrom(file, ground, seen) {
	if (!file.name.endsWith(ruleEnding)) reject(file, {
		path: [],
		what: "this is neither a rule nor grades.json",
		hint: "Name a rule file <id>.rule.json, after the rule it changes or adds"
	});
	const change = await shaped(file, changeSchema);
	const id = String(change.id);
	if (`${id}${ruleEnding}` !== file.name) reject(file, {
		path: ["id"],
		what: `the id “${id}” does not match the file's name`,
		hint: `Name the file ${id}${ruleEnding}, or write the id ${file.name.slice(0, -10)}`
	});
	if (seen.has(id)) reject(file, {
		path: ["id"],
		what: `the rule “${id}” stands twice in this folder`
	});
	const shipped = ground.rules.find((rule) => rule.id === id);
	if (shipped === void 0) {
		const lacking = lackingFields(change);
		if (lacking.length > 0) reject(file, unknownIdFault(id, lacking, ground));
	} else if (typeof change.off === "string") return {
		...shipped,
		off: change.off
	};
	const rule = laidOver({ ...shipped }, change);
	const faults = await ruleFaults(rule, ground);
	if (faults.length > 0) reject(file, ...faults);
	return rule;
}
function lackingFields(change) {
	return rule_schema_default.required.filter((field) => !Object.hasOwn(change, field));
}
/** An incomplete rule under an unknown id is most likely a change to a rule whose id was misspelt. */
function unknownIdFault(id, lacking, { rules }) {
	const near = nearest(id, rules.map((rule) => rule.id));
	return {
		path: ["id"],
		what: `there is no rule “${id}” to change, and as a new rule it lacks ${lacking.join(", ")}`,
		hint: near === null ? "wattassay rules lists the ids" : `Did you mean “${near}”?`
	};
}
async function gradesFrom(file) {
	return await shaped(file, grades_schema_default);
}
async function shaped(file, schema) {
	let value;
	try {
		value = parseJson(file.text, "rule-wrong", file.name);
	} catch (error) {
		throw error instanceof Problem ? new AggregateError([error]) : error;
	}
	const faults = await faultsOf(schema, value);
	if (faults.length > 0) reject(file, ...faults);
	return withoutSchema(value);
}
/** Ends the reading of one file with all that is wrong with it. */
function reject(file, ...faults) {
	throw new AggregateError(problemsOf(faults, "rule-wrong", file.name));
}
// src/rules.ts
/**
* Rule files → rule set: the shipped rules, and an event's own folder laid over them. The table of
* contents that puts rules and measures together.
*/
/** What the program ships: rules, grades and the measures that they may name. */
const shipped = {
	rules: [
		{
			$schema: "./rule.schema.json",
			id: "missing-channel",
			title: "A required channel is missing",
			family: "recording",
			question: "Are the channels there that this event requires?",
			measure: "missing-channel-count",
			subjects: "primary",
			options: { "validShare": .5 },
			needs: ["the event's requirements"],
			limits: { "note": {
				"at least": 1,
				"of": "value",
				"end": "cautious"
			} },
			highest: "incomplete",
			ceilings: [],
			claims: {
				"above": "Of the {required|channel|channels} that the event requires, {missing} cannot be used in the race. Not in the file: {absent}. Zero throughout: {zero}. Mostly without a valid value: {invalid}.",
				"fine": "The {required|channel|channels} that the event requires can be used."
			},
			innocent: [
				"A sensor was not paired, or its battery is flat.",
				"The recorder or a converter left the channel out of the exported file.",
				"A strap or sensor lost contact for most of the race."
			],
			settles: ["The original file from the head unit or app, if the one handed in was exported or converted.", "Another recording of the same ride that holds the channel."],
			source: {
				"kind": "common practice",
				"note": "What an event requires is its own choice; a channel that holds a value in less than half of the race is of no use to any check."
			},
			examples: [{
				"value": 1,
				"interval": [1, 1],
				"count": 3,
				"level": "note"
			}, {
				"value": 0,
				"interval": [0, 0],
				"count": 3,
				"level": "none"
			}]
		},
		{
			$schema: "./rule.schema.json",
			id: "recording-gap",
			title: "Seconds of the race are missing",
			family: "recording",
			question: "Are seconds missing where it matters?",
			measure: "lost-seconds",
			subjects: "primary",
			options: {
				"withinSeconds": 600,
				"stillSpeed": 1.5,
				"zeroSeconds": 2,
				"zeroCadence": 40,
				"zeroBesideWatts": 100,
				"heldSeconds": 8
			},
			needs: ["power"],
			limits: {
				"note": {
					"at least": 15,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 60,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "Within {within} of the race, power is missing for {value}; over the whole race for {total} ({share}), the longest stretch being {longest}. Pauses are not counted.",
				"fine": "At most {value} of power are missing in any {within} of the race, {total} in all."
			},
			innocent: [
				"The radio link between meter and recorder dropped out: interference, distance, a weak battery.",
				"The recorder or the app on the phone was interrupted.",
				"A converter left seconds out."
			],
			settles: ["A recording of the same ride from another device that holds these seconds.", "The original file from the head unit, if the one handed in was exported or converted."],
			source: {
				"kind": "common practice",
				"note": "A minute within ten is long enough to hide or to lose an effort that decides a race; short dropouts are everyday, and a meter sleeps while its rider stands. No published figure."
			},
			examples: [
				{
					"value": 75,
					"interval": [75, 75],
					"count": 3600,
					"level": "query"
				},
				{
					"value": 20,
					"interval": [20, 20],
					"count": 3600,
					"level": "note"
				},
				{
					"value": 4,
					"interval": [4, 4],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "clock-fault",
			title: "The clock does not run forward evenly",
			family: "recording",
			question: "Do timestamps run forward once a second?",
			measure: "misplaced-share",
			subjects: "primary",
			options: {},
			needs: ["timestamps"],
			limits: {
				"note": {
					"at least": .002,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": .035,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "Of {records|record|records}, {misplaced} have no sure place in time: {behind} where the clock goes back ({backward|time|times}, by up to {furthest}), {doubled} share a second with another, {far} lie far from the ride, {timeless} have no time. They were put in order of time, and those of one second averaged.",
				"fine": "The clock runs forward: {misplaced} of {records|record|records} have no sure place in time."
			},
			innocent: [
				"The recorder set its clock by satellite or phone during the ride.",
				"The clock was put back by hand, or by summer time.",
				"Two recordings, or two parts of one, were joined by a converter.",
				"A recorder that writes a second twice and skips the next."
			],
			settles: ["The original file from the head unit, if the one handed in was exported, converted or joined.", "A second recording of the same ride, whose clock ran on."],
			source: {
				"kind": "common practice",
				"note": "Doubled and skipped seconds that make up for each other are everyday and not counted; where one record in thirty has no sure place, the order of the ride is in doubt. No published figure."
			},
			examples: [
				{
					"value": .4,
					"interval": [.4, .4],
					"count": 3600,
					"level": "query"
				},
				{
					"value": .01,
					"interval": [.01, .01],
					"count": 3600,
					"level": "note"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "outside-race-window",
			title: "The recording does not cover the race",
			family: "recording",
			question: "Does the recording cover the race, on its date?",
			measure: "uncovered-share",
			subjects: "primary",
			options: { "slipShare": .05 },
			needs: ["start and finish of the race"],
			limits: {
				"note": {
					"at least": .01,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": .1,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "{value} of the race ({race} long) lie outside the recording: it begins {late} too late and ends {early} too early. A clock that is wrong by {slip} would explain it.",
				"fine": "The recording covers the race ({value} of it lie outside)."
			},
			innocent: [
				"The clock of the recorder, or the times given for the race, are set to another time zone.",
				"The recording was started after the start, or stopped before the finish as given for the whole field.",
				"The recording was interrupted and the other part is a file of its own.",
				"Another ride was handed in by mistake."
			],
			settles: ["The rider's word on the recorder's time zone, or the event's own record of when this rider started and finished.", "The other part of the recording, or the right file."],
			source: {
				"kind": "common practice",
				"note": "A tenth of a race is more than a late press of the button; a slip by whole hours or quarters is what time zones make. No published figure."
			},
			examples: [
				{
					"value": 1,
					"interval": [1, 1],
					"count": 3600,
					"circumstances": ["zone slip"],
					"level": "query"
				},
				{
					"value": .03,
					"interval": [.03, .03],
					"count": 3600,
					"level": "note"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "summary-mismatch",
			title: "The file's totals do not fit its samples",
			family: "recording",
			question: "Do the file's own totals agree with its samples?",
			measure: "total-discrepancy",
			subjects: "primary",
			options: { "mostMissing": .5 },
			needs: ["totals stated in the file"],
			limits: {
				"note": {
					"at least": 2,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 5,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [{
				"when": "unfinished",
				"level": "note",
				"why": "The file is damaged or joined of several, so that its totals may belong to other samples than those that could be read."
			}],
			claims: {
				"above": "The file states {stated} as its {total}; its samples give {nearest} at the nearest ({definition}): {value} apart, more than any usual way of working it out explains.",
				"fine": "The totals that the file states agree with its samples under a usual definition (at most {value} apart)."
			},
			innocent: [
				"The recorder works the total out in a way of its own that is not known here.",
				"The file was cut, joined or repaired and kept the old totals.",
				"A correction that the rider switched on in an app was applied to the samples alone."
			],
			settles: ["The original file from the head unit, if the one handed in was exported, cut or converted.", "Another ride from the same recorder: its totals must be off in the same way."],
			source: {
				"kind": "common practice",
				"note": "Of 38 real files with a mean, 35 agreed within 2 % with a usual definition and one left zeros out; 5 % is beyond all but unusual recorders. No published figure."
			},
			examples: [
				{
					"value": 12,
					"interval": [12, 12],
					"count": 4,
					"level": "query"
				},
				{
					"value": 12,
					"interval": [12, 12],
					"count": 4,
					"circumstances": ["unfinished"],
					"level": "note"
				},
				{
					"value": 3,
					"interval": [3, 3],
					"count": 4,
					"level": "note"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 4,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "repeated-block",
			title: "A stretch of the ride occurs twice",
			family: "recording",
			question: "Does a stretch of samples occur twice?",
			measure: "copied-seconds",
			subjects: "recordings",
			options: {
				"windowSamples": 30,
				"tellingShare": .4,
				"distinctChanges": 4,
				"chance": 1e-6,
				"sameMomentSeconds": 3,
				"minimumSamples": 300
			},
			needs: ["power"],
			limits: {
				"query": {
					"at least": 30,
					"of": "value",
					"end": "cautious"
				},
				"refer": {
					"at least": 240,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "refer",
			ceilings: [],
			claims: {
				"above": "The power from {first:at} occurs again, sample by sample, from {second:at}: {value} long. There are {copies|such repeat|such repeats}, {total} in all.",
				"fine": "No stretch of power occurs twice."
			},
			innocent: [
				"The recorder or app wrote a stored stretch twice after a lost connection.",
				"A converter or a repair tool filled a gap with a piece of the same ride.",
				"The trainer played back a stored programme in place of a measurement."
			],
			settles: ["The original file from the head unit or app, if the one handed in was exported, converted or repaired.", "A second recording of the same ride, which must then show both stretches as they were ridden."],
			source: {
				"kind": "common practice",
				"note": "Half a minute of measured power does not repeat to the watt; the number expected by chance is worked out from the recording itself. What is put before a jury, four minutes, is a judgement."
			},
			examples: [
				{
					"value": 300,
					"interval": [300, 300],
					"count": 3600,
					"level": "refer"
				},
				{
					"value": 150,
					"interval": [150, 150],
					"count": 3600,
					"level": "query"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "duplicate-submission",
			title: "Two riders handed in the same recording",
			family: "recording",
			question: "Did two riders hand in the same recording?",
			measure: "shared-seconds",
			subjects: "primary",
			options: {
				"windowSamples": 30,
				"tellingShare": .4,
				"distinctChanges": 4,
				"chance": 1e-9
			},
			needs: ["the other submissions of the event"],
			limits: {
				"query": {
					"at least": 45,
					"of": "value",
					"end": "cautious"
				},
				"refer": {
					"at least": 300,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "refer",
			ceilings: [],
			claims: {
				"above": "From {first:at} on, {channel} is the same as in the submission of {other}, sample by sample, for {value}; {total} in all.",
				"fine": "No stretch is the same as in another submission."
			},
			innocent: [
				"One file was handed in twice by mistake, or under the wrong name.",
				"Two riders share a recorder or an account, and one of them exported the other's ride.",
				"The organiser mixed up two files on receipt."
			],
			settles: ["Both riders' files as they lie on their recorders.", "A second recording of either ride."],
			source: {
				"kind": "common practice",
				"note": "Two riders' power never agrees to the watt for three quarters of a minute; the number expected by chance is worked out from the recordings themselves."
			},
			examples: [
				{
					"value": 2400,
					"interval": [2400, 2400],
					"count": 3600,
					"level": "refer"
				},
				{
					"value": 90,
					"interval": [90, 90],
					"count": 3600,
					"level": "query"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "rescaled-series",
			title: "Whole watts look multiplied",
			family: "recording",
			question: "Were whole-number watts multiplied afterwards?",
			measure: "lattice-excess",
			subjects: "recordings",
			options: {
				"leastFactor": .85,
				"greatestFactor": 1.25,
				"blindShare": .015,
				"stepWatts": .5,
				"strayShare": .02,
				"flankWatts": 4,
				"commonShare": .98,
				"firstLook": 2.5,
				"candidates": 16,
				"chance": .001,
				"fromWatts": 40,
				"minimumSamples": 300,
				"wholeShare": .95,
				"steadySamples": 20,
				"steadyWatts": 1.5,
				"dueCounts": 3,
				"coarseShare": .23,
				"outsideExpected": 8,
				"outsideLoss": 10
			},
			needs: ["power in whole watts"],
			limits: { "refer": {
				"at least": 1.4,
				"of": "value",
				"end": "cautious"
			} },
			highest: "refer",
			ceilings: [{
				"when": "throughout",
				"level": "query",
				"why": "A comb through the whole recording is made by a meter with coarse steps as well as by multiplying: this recording alone cannot tell the two apart."
			}, {
				"when": "lowered",
				"level": "query",
				"why": "Power that was made lower costs its rider and is asked about, not put before a jury."
			}],
			claims: {
				"above": "From {from:at} to {to:at} the watts that occur are those of whole numbers times {factor}: where {expected} counts were due at the watts that this factor leaves out (or fills twice), there are {counted}. Either the meter works in such coarse steps, or the watts were multiplied, a change of {value}.",
				"fine": "The watts that occur show no trace of a factor. Factors within 1.5 % of 1, decimals, and smoothing afterwards would hide it."
			},
			innocent: [
				"The meter works in coarse steps of its own and rounds them to whole watts.",
				"The recorder or app applies the rider's own correction factor, as some do to match two meters.",
				"A converter changed units on the way."
			],
			settles: [
				"The original file from the head unit, if the one handed in was exported or converted.",
				"Another ride recorded with the same meter: coarse steps are there as well.",
				"The settings of the recorder, if it can scale power."
			],
			source: {
				"kind": "published",
				"citation": "What a mapping leaves in a histogram: Stamm and Liu 2008, 2010; Cao et al. 2014, IEEE TIFS 9:515–525. The probability of a comb by chance is bounded by Markov's inequality over all factors and stretches tried; it is 1 in 1000 at the limit."
			},
			examples: [
				{
					"value": 6,
					"interval": [5.9, 6.1],
					"count": 3e3,
					"level": "refer"
				},
				{
					"value": 5,
					"interval": [5, 5],
					"count": 3e3,
					"circumstances": ["throughout"],
					"level": "query"
				},
				{
					"value": 5,
					"interval": [5, 5],
					"count": 3e3,
					"circumstances": ["lowered"],
					"level": "query"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3e3,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "dead-cadence",
			title: "Cadence stays at zero",
			family: "trace",
			question: "Is cadence present but zero throughout while power flows?",
			measure: "zero-cadence-share",
			subjects: "primary",
			options: {
				"minimumWatts": 50,
				"minimumSeconds": 120
			},
			needs: ["power", "cadence"],
			limits: {
				"note": {
					"at least": .1,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": .9,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "Cadence is zero in {value} of the {seconds:s} in which power flows.",
				"fine": "Cadence is zero in {value} of the {seconds:s} in which power flows."
			},
			innocent: [
				"The cadence sensor's battery is flat, or its magnet has moved.",
				"The trainer estimates cadence and does not at this gear or resistance.",
				"The recorder was paired with a cadence source that was not on this bike."
			],
			settles: ["A cadence source that works (a sensor on the crank or shoe, or the power meter's own) at the next race.", "A second recording of the same ride that holds cadence."],
			source: {
				"kind": "common practice",
				"note": "Cadence at zero while watts flow is an equipment fault that leaves the checks of torque and coasting without evidence; the share is counted exactly."
			},
			examples: [
				{
					"value": 1,
					"interval": [1, 1],
					"count": 3e3,
					"level": "query"
				},
				{
					"value": .3,
					"interval": [.3, .3],
					"count": 3e3,
					"level": "note"
				},
				{
					"value": .004,
					"interval": [.004, .004],
					"count": 3e3,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "coasting-power",
			title: "Power goes on while the cranks stand still",
			family: "trace",
			question: "Does power go on while cadence is zero?",
			measure: "power-at-zero-cadence",
			subjects: "primary",
			options: {
				"minimumWatts": 30,
				"tailSeconds": 3,
				"deadShare": .5
			},
			needs: ["power", "cadence"],
			limits: {
				"note": {
					"at least": 1,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 10,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "In {stretches|stretch|stretches} power goes on for longer than {tail} after cadence has fallen to zero: {value} beyond that in all, up to {longest} at a time.",
				"fine": "Power never goes on for much longer than {tail} after cadence has fallen to zero ({value} beyond that in all)."
			},
			innocent: [
				"The cadence sensor missed the cranks for a while, so that the rider pedalled all along.",
				"The trainer's heavy flywheel runs on, or its firmware holds the last value.",
				"Power and cadence come from different sensors with different delays."
			],
			settles: [
				"A second recording of the same ride with its own cadence.",
				"A short test at home: stop pedalling at 200 W and let the recording run on for a minute.",
				"Updating the trainer's firmware before the next race."
			],
			source: {
				"kind": "common practice",
				"note": "Flywheel tails and sensor lag of up to about 3 s are normal; longer holds, or many of them, are not. No published figure."
			},
			examples: [
				{
					"value": 40,
					"interval": [40, 40],
					"count": 3,
					"level": "query"
				},
				{
					"value": 3,
					"interval": [3, 3],
					"count": 1,
					"level": "note"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 0,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "flat-setpoint",
			title: "Power repeats a target",
			family: "trace",
			question: "Does the power repeat a target instead of measuring it?",
			measure: "flat-power-share",
			subjects: "recordings",
			options: {
				"windowSeconds": 20,
				"fewestRecords": 10,
				"spreadWatts": 1.2,
				"stepWatts": 4,
				"minimumWatts": 100,
				"minimumSeconds": 180
			},
			needs: ["power"],
			limits: {
				"note": {
					"at least": .04,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": .1,
					"of": "value",
					"end": "cautious"
				},
				"refer": {
					"at least": .6,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "refer",
			ceilings: [{
				"when": "workout",
				"level": "query",
				"why": "In a workout a trainer may be set to hold a target; reporting the target instead of the power is then a setting to be changed, not a result to be judged."
			}],
			claims: {
				"above": "In {value} of the pedalling at {from} and more, power stands still on {levels|level|levels} ({plateaus|plateau|plateaus}, the longest {longest}) more closely than legs can hold it.",
				"fine": "Power moves as it does on a rider: it stands still in {value} of the pedalling at {from} and more."
			},
			innocent: [
				"The trainer or app reports the target of its set-power mode instead of what it measures; often a setting that the rider never chose.",
				"The recording comes from the app that sets the target, not from the meter.",
				"The ride was a controlled workout recorded with heavy smoothing."
			],
			settles: [
				"The same ride recorded by another device, or by another app straight from the meter.",
				"Switching off the smoothing or set-power mode and riding ten minutes freely on the same equipment.",
				"A second meter at the next race."
			],
			source: {
				"kind": "common practice",
				"note": "An honest controlled session still varies by 2–4 %; a standard deviation of about 1 W over 20 s is below any rider's. No published figure."
			},
			explains: ["frozen-value", "machine-like"],
			examples: [
				{
					"value": .95,
					"interval": [.95, .95],
					"count": 3400,
					"level": "refer"
				},
				{
					"value": .95,
					"interval": [.95, .95],
					"count": 3400,
					"circumstances": ["workout"],
					"level": "query"
				},
				{
					"value": .3,
					"interval": [.3, .3],
					"count": 3400,
					"level": "query"
				},
				{
					"value": .05,
					"interval": [.05, .05],
					"count": 3400,
					"level": "note"
				},
				{
					"value": .001,
					"interval": [.001, .001],
					"count": 3400,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "frozen-value",
			title: "A value stands still",
			family: "trace",
			question: "Does one value repeat for 20 s or more while other channels move?",
			measure: "frozen-seconds",
			subjects: "primary",
			options: {
				"powerSeconds": 20,
				"cadenceSeconds": 60,
				"adjoiningSeconds": 3,
				"targetShare": .5
			},
			needs: ["power or cadence, recorded beside another channel"],
			limits: {
				"note": {
					"at least": 20,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 90,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [{
				"when": "target levels",
				"level": "note",
				"why": "Power steps from one repeated level straight to the next: that is a reported target rather than a frozen value, and is asked about as such."
			}],
			claims: {
				"above": "In {stretches|stretch|stretches}, mostly of {channel}, a single value repeats while other channels move: for {value} in all, up to {longest} at a time.",
				"fine": "Neither power nor cadence stands still for long while other channels move ({value} in all)."
			},
			innocent: [
				"The sensor's link dropped out and the recorder went on writing the last value.",
				"A sensor lost contact and its firmware holds the last reading.",
				"The app that recorded the ride was stalled."
			],
			settles: ["A second recording of the same ride.", "The original file from the head unit, if another app's export was handed in."],
			source: {
				"kind": "common practice",
				"note": "Power to the watt does not repeat for 20 s on a rider; cadence is coarser and gets a minute. No published figure."
			},
			examples: [
				{
					"value": 240,
					"interval": [240, 240],
					"count": 3600,
					"level": "query"
				},
				{
					"value": 30,
					"interval": [30, 30],
					"count": 3600,
					"level": "note"
				},
				{
					"value": 2e3,
					"interval": [2e3, 2e3],
					"count": 3600,
					"circumstances": ["target levels"],
					"level": "note"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "power-spike",
			title: "Single samples far above their surroundings",
			family: "trace",
			question: "Are there single samples that no rider and wheel could make?",
			measure: "spike-count",
			subjects: "primary",
			options: {
				"widestRecords": 2,
				"aroundRecords": 3,
				"aboveWatts": 400,
				"aboveFactor": 1.8,
				"massKg": 55,
				"speedShare": .5
			},
			needs: ["power"],
			limits: {
				"note": {
					"at least": 1,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 5,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "In {spikes|place|places} power leaps far above the seconds around it and is back within 2 s, as no rider on a wheel can do; the highest such sample is {highest}, the first is at {first:at}.",
				"fine": "No sample stands alone above what surrounds it."
			},
			innocent: [
				"A false reading of the meter: a knock, a shift under load, a wrong cadence for one turn of the cranks.",
				"Radio interference or a corrupted record.",
				"Power summed twice when two sources were paired."
			],
			settles: [
				"A look at the second in the recording: such samples are left out of a result by most organisers.",
				"A second recording of the same ride.",
				"New batteries and a check of the magnet or pods before the next race."
			],
			source: {
				"kind": "common practice",
				"note": "A single false sample is everyday and only a remark; several of them can lift short bests. The height is a judgement: no published figure."
			},
			examples: [
				{
					"value": 12,
					"interval": [12, 12],
					"count": 3600,
					"level": "query"
				},
				{
					"value": 1,
					"interval": [1, 1],
					"count": 3600,
					"level": "note"
				},
				{
					"value": 0,
					"interval": [0, 0],
					"count": 3600,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "over-smoothed",
			title: "Power was averaged over many seconds",
			family: "trace",
			question: "Has the trace been averaged?",
			measure: "averaging-seconds",
			subjects: "primary",
			options: {
				"spans": [
					2,
					4,
					8
				],
				"stepFactor": 6,
				"modelError": .05,
				"halvesFrom": 5,
				"halfFactor": 1.25,
				"longestSeconds": 45,
				"dip": -.33,
				"dipAgreement": 1.3,
				"scatterTells": 20,
				"plainFrom": 2.5,
				"clip": 2.5,
				"minimumWatts": 40,
				"steadySeconds": 20,
				"steadyWatts": .5,
				"minimumSeconds": 300
			},
			needs: ["power of most seconds"],
			limits: {
				"note": {
					"at least": 4,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 5.4,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "Power looks averaged over about {value} ({averaging}, {low} to {high}), {part}. Short efforts are flattened, and nothing can be said of sprints.",
				"fine": "The power is as crisp as meters and legs make it: averaged over about {value}."
			},
			innocent: [
				"The trainer or app smooths the power it sends, often a setting that is on from the start.",
				"The recorder is set to show and record a mean over several seconds.",
				"The file comes from a website or app that keeps a smoothed copy."
			],
			settles: [
				"The original file from the head unit or app, if the one handed in was exported.",
				"Switching smoothing off in trainer, app and recorder before the next race.",
				"A second recording of the same ride straight from a meter."
			],
			source: {
				"kind": "common practice",
				"note": "Of five real recordings four are as crisp as one second and one is averaged over about 3 s; trainers smooth over up to 3 s by themselves. more than 5 s is beyond that. No published figure."
			},
			examples: [
				{
					"value": 10,
					"interval": [9.5, 10.5],
					"count": 3e3,
					"level": "query"
				},
				{
					"value": 5,
					"interval": [4.5, 5.5],
					"count": 3e3,
					"level": "note"
				},
				{
					"value": 1.2,
					"interval": [1, 1.4],
					"count": 3e3,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "estimated-power",
			title: "Power follows a fixed curve of speed",
			family: "trace",
			question: "Is power calculated from speed instead of measured?",
			measure: "speed-curve-scatter",
			subjects: "primary",
			options: {
				"rows": 500,
				"trimShare": .15,
				"minimumSpeed": 2,
				"minimumRows": 300,
				"minimumSpread": 8,
				"shownBelow": 8,
				"lightestRider": 25,
				"heaviestRider": 180
			},
			needs: ["power", "speed"],
			limits: {
				"note": {
					"at most": 3.4,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at most": 3,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"below": "Power keeps to a fixed curve of speed within {value} of its mean, while it varies by {spread} in all: as if it were calculated from speed and not measured.",
				"fine": "Power does not keep to a curve of speed: it scatters by {value} around the nearest one."
			},
			innocent: ["The trainer has no power meter and its app works power out from wheel speed, often without saying so.", "The speed in the file was worked out from power by a game on a flat course."],
			settles: ["Make and model of the trainer: whether it measures power is known for each.", "A second recording from a meter on the bicycle."],
			source: {
				"kind": "common practice",
				"note": "Measured power scatters around any curve of speed by far more than rounding; a calculated one by rounding and smoothing alone. No published figure."
			},
			examples: [
				{
					"value": 1,
					"interval": [.8, 1.2],
					"count": 500,
					"level": "query"
				},
				{
					"value": 3,
					"interval": [2.8, 3.2],
					"count": 500,
					"level": "note"
				},
				{
					"value": 25,
					"interval": [22, 28],
					"count": 500,
					"level": "none"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "machine-like",
			title: "What every rider shows is missing",
			family: "trace",
			question: "Does the recording lack what every rider has?",
			measure: "missing-traits",
			subjects: "primary",
			options: {
				"minimumWatts": 40,
				"minimumSeconds": 600,
				"fewest": 2,
				"cadenceWander": 1,
				"scatterRatio": 1.32,
				"stillestHeart": .03,
				"busiestHeart": .8,
				"heartScatter": .7,
				"heartFrom": 300,
				"heartTimes": [
					1,
					15,
					30,
					45,
					60,
					90
				],
				"unevenDigits": .15,
				"digitChance": .001
			},
			needs: ["two of power, cadence and heart rate"],
			limits: { "note": {
				"at least": 2,
				"of": "value",
				"end": "cautious"
			} },
			highest: "note",
			ceilings: [],
			claims: {
				"above": "Of {looked|thing|things} that every rider shows, this recording does not show {missing}: {traits}.",
				"fine": "The recording shows what every rider shows ({missing} of {looked} missing)."
			},
			innocent: [
				"A trainer that holds both power and cadence, or a sensor that reports in coarse steps.",
				"A heart-rate strap that lost contact and repeats its value.",
				"A file that an app worked out from a plan because the recording was lost."
			],
			settles: ["The original file from the head unit or app.", "A second recording of the same ride."],
			source: {
				"kind": "common practice",
				"note": "Self-paced riding has a 1/f-like spectrum (Tucker et al. 2006, BJSM 40:912–917); the limits lie beyond five real and many simulated rides. A remark only, until more real rides show that it can ask more."
			},
			examples: [{
				"value": 3,
				"interval": [3, 3],
				"count": 5,
				"level": "note"
			}, {
				"value": 1,
				"interval": [1, 1],
				"count": 5,
				"level": "none"
			}]
		},
		{
			$schema: "./rule.schema.json",
			id: "different-ride",
			title: "The second recording is of another ride",
			family: "agreement",
			question: "Is the second recording of this ride and this rider at all?",
			measure: "shared-detail",
			subjects: "pairs",
			options: {
				"detailSeconds": 6,
				"lagSeconds": 4,
				"leastSeconds": 300,
				"leastWatts": 3,
				"leastRpm": .5,
				"secondsPerSample": 4,
				"mostDetailRatio": 16
			},
			needs: ["power", "second recording"],
			limits: { "query": {
				"at most": .27,
				"of": "value",
				"end": "cautious"
			} },
			highest: "query",
			ceilings: [{
				"when": "unequal averaging",
				"level": "note",
				"why": "one meter averages over many more seconds than the other, which hides the detail"
			}],
			claims: {
				"below": "The two recordings share no detail (correlation {value}, at most {high}): riders of one race share surges and climbs, two meters on one bicycle share every pedal stroke.",
				"fine": "The two recordings share their detail in {channel} (correlation {value}): they are of one ride."
			},
			innocent: ["The wrong file was picked: another ride of the same day, or another rider's file.", "One of the recorders lost its sensor for most of the ride."],
			settles: ["The original file of the second meter from the head unit, for the same start time.", "A list of the recordings of that day, with their start times."],
			source: {
				"kind": "common practice",
				"note": "Two independent meters on one ride correlate at 0.94 in second-by-second power; the limit is set where other riders of one race and the same workout on another day lie."
			},
			examples: [{
				"value": .02,
				"interval": [-.05, .09],
				"count": 700,
				"level": "query"
			}, {
				"value": .6,
				"interval": [.55, .65],
				"count": 700,
				"level": "none"
			}]
		},
		{
			$schema: "./rule.schema.json",
			id: "shared-origin",
			title: "The second is not a measurement of its own",
			family: "agreement",
			question: "Is the second recording an independent measurement?",
			measure: "unexplained-detail",
			subjects: "pairs",
			options: {},
			needs: ["power", "second recording"],
			limits: {
				"note": {
					"at most": .15,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at most": .12,
					"of": "value",
					"end": "cautious"
				},
				"refer": {
					"at most": .02,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "refer",
			ceilings: [{
				"when": "same sensor",
				"level": "note",
				"why": "one sensor on two recorders is common and honest; it is only no second opinion"
			}, {
				"when": "independent",
				"level": "none",
				"why": "gain and misfit are those of two meters"
			}],
			claims: {
				"below": "The primary explains the second almost wholly: {value} of its second-to-second detail is left over, with a gain of {gain}.",
				"fine": "{value} of the second's second-to-second detail is its own, as between two meters."
			},
			innocent: [
				"One sensor was recorded on two devices, or the trainer was controlled by the pedals: honest, but no second opinion.",
				"The file was converted or corrected by a program that changed its values.",
				"The recorder applies a correction factor of its own to the same sensor."
			],
			settles: [
				"The original file of the second from its own head unit.",
				"The sensor list of both recorders: their serial numbers.",
				"A short ride with two meters on two recorders."
			],
			source: {
				"kind": "common practice",
				"note": "One sensor on two recorders correlates at about 0.994 in second-by-second power, two meters at about 0.944; what radio and rounding cannot make is asked about."
			},
			examples: [
				{
					"value": .4,
					"interval": [.4, .4],
					"count": 3e3,
					"level": "none"
				},
				{
					"value": .13,
					"interval": [.13, .13],
					"count": 3e3,
					"level": "note"
				},
				{
					"value": .06,
					"interval": [.06, .06],
					"count": 3e3,
					"level": "query"
				},
				{
					"value": .005,
					"interval": [.005, .005],
					"count": 3e3,
					"level": "refer"
				},
				{
					"value": .005,
					"interval": [.005, .005],
					"count": 3e3,
					"circumstances": ["same sensor"],
					"level": "note"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "mean-bias",
			title: "One meter reads higher overall",
			family: "agreement",
			question: "Do the two meters differ overall by more than honest meters do?",
			measure: "overall-difference",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 15
			},
			needs: ["power", "second recording"],
			limits: {
				"query": {
					"at least": 2.8,
					"at most": -2.8,
					"of": "declared spread",
					"end": "estimate"
				},
				"refer": {
					"at least": 2.9,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "refer",
			ceilings: [],
			claims: {
				"above": "The primary reads {value} above the second over the race ({own} against {other} on average), which is more than honest pairs of this kind differ.",
				"below": "The primary reads {value} against the second over the race ({own} against {other} on average), which is further below than honest pairs of this kind lie.",
				"fine": "The primary reads {value} against the second over the race ({own} against {other} on average), within what honest pairs of this kind show."
			},
			innocent: [
				"The second meter reads low: a pair alone cannot say which of the two is off.",
				"A zero offset or spin-down was not done before the ride, on either meter.",
				"One of the meters measures one leg and doubles it, and the rider's legs differ.",
				"The crank length is set wrong in one of them: 165 for 172.5 mm reads 4.3 % low."
			],
			settles: [
				"A short ride with both meters after a zero offset on one and a spin-down on the other.",
				"A third meter on the same ride.",
				"A photo of the settings page that shows crank length, sides and calibration."
			],
			source: {
				"kind": "published",
				"citation": "Scatter of honest meters -0.9 ± 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461); chain loss 2.1 ± 1.5 % (Smit et al. 2023, Sports Eng., doi 10.1007/s12283-023-00439-z); a claim of ±a counts as a/√3 (JCGM 100:2008). The multiples follow from the share of honest submissions that a rule may stop."
			},
			examples: [
				{
					"value": 3,
					"interval": [2.6, 3.4],
					"count": 110,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.6
						},
						"field": {
							"centre": 0,
							"spread": 4.5
						}
					}
				},
				{
					"value": 7,
					"interval": [6.5, 7.5],
					"count": 110,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.6
						},
						"field": {
							"centre": 0,
							"spread": 4.5
						}
					}
				},
				{
					"value": 18,
					"interval": [17.4, 18.6],
					"count": 110,
					"level": "refer",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.6
						},
						"field": {
							"centre": 0,
							"spread": 4.5
						}
					}
				},
				{
					"value": -18,
					"interval": [-18.6, -17.4],
					"count": 110,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.6
						},
						"field": {
							"centre": 0,
							"spread": 4.5
						}
					}
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "zero-offset",
			title: "A constant torque lies between the meters",
			family: "agreement",
			question: "Do the meters differ by a constant torque, as when a zero offset was not done?",
			measure: "torque-offset",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 20,
				"leastRange": 2,
				"errorRatios": [
					.5,
					1,
					2
				]
			},
			needs: [
				"power",
				"cadence",
				"second recording"
			],
			limits: { "query": {
				"at least": .9,
				"at most": -1.5,
				"of": "value",
				"end": "cautious"
			} },
			highest: "query",
			ceilings: [],
			claims: {
				"above": "The primary reads a constant {value} above the second, about {watts} at {rpm}, beside a gain of {gain}.",
				"below": "The primary reads a constant {value} against the second, about {watts} at {rpm}, beside a gain of {gain}.",
				"fine": "The constant torque between the meters is {value}, about {watts} at {rpm}: no more than honest pairs show."
			},
			innocent: [
				"A zero offset was not done on one of the meters before the ride, or done while the pedals were loaded.",
				"The temperature changed after the zero offset.",
				"The second is the one with the offset: a pair alone cannot say which."
			],
			settles: ["A zero offset on both meters, and ten minutes of riding at low and high power.", "The calibration log of the head unit for that day."],
			source: {
				"kind": "common practice",
				"note": "1 N·m is 6.3 W at 60 rpm and 9.4 W at 90 rpm. A constant offset shows as a torque, a wrong slope as a gain; the limit is where offsets of honest meters end in simulated rides."
			},
			examples: [
				{
					"value": .3,
					"interval": [-.2, .8],
					"count": 100,
					"level": "none"
				},
				{
					"value": 2.1,
					"interval": [1.6, 2.6],
					"count": 100,
					"level": "query"
				},
				{
					"value": -2.1,
					"interval": [-2.6, -1.6],
					"count": 100,
					"level": "query"
				}
			],
			explains: ["mean-bias", "power-dependent-bias"]
		},
		{
			$schema: "./rule.schema.json",
			id: "wide-spread",
			title: "Single efforts lie far apart",
			family: "agreement",
			question: "How far apart are the meters in single efforts?",
			measure: "effort-spread",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 20
			},
			needs: ["power", "second recording"],
			limits: {
				"note": {
					"at least": 7,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": 12,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "Single efforts of {seconds} lie up to ±{value} apart on the two meters, once drift and dependence on power and cadence are taken out.",
				"fine": "Single efforts of {seconds} lie within ±{value} of each other on the two meters."
			},
			innocent: [
				"One of the meters lost its radio link now and then.",
				"A loose pedal or cleat, a slipping tyre or belt.",
				"A one-sided meter: the balance of the legs changes from effort to effort."
			],
			settles: ["A repeat after tightening and a new battery.", "The signal-loss count of the head unit, where it keeps one."],
			source: {
				"kind": "published",
				"citation": "Half-minute efforts of honest meters scatter by ±38.9 W around 6.3 W (Nimmerichter et al. 2017, Int J Sports Med, doi 10.1055/s-0043-101909), about ±7 % of a sprint; limits of agreement as Bland & Altman 1999, Stat Methods Med Res 8:135-160."
			},
			examples: [
				{
					"value": 3,
					"interval": [2.6, 3.4],
					"count": 100,
					"level": "none"
				},
				{
					"value": 9,
					"interval": [8, 10],
					"count": 100,
					"level": "note"
				},
				{
					"value": 20,
					"interval": [18, 22],
					"count": 100,
					"level": "query"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "power-dependent-bias",
			title: "The difference grows with power",
			family: "agreement",
			question: "Does the primary read higher above the second the harder the rider goes?",
			measure: "power-dependence",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 20,
				"mostInflation": 5,
				"lowQuantile": .5,
				"highQuantile": .95,
				"leastRange": .15,
				"declaredSpread": 1,
				"fieldSpread": 1.5
			},
			needs: ["power", "second recording"],
			limits: { "query": {
				"at least": 3.5,
				"at most": -5,
				"of": "declared spread",
				"end": "estimate"
			} },
			highest: "query",
			ceilings: [],
			claims: {
				"above": "From {from} to {to}, the primary rises by {value} against the second, at equal time and cadence.",
				"below": "From {from} to {to}, the primary falls by {value} against the second, at equal time and cadence.",
				"fine": "From {from} to {to}, the difference of the meters changes by {value}, no more than honest pairs do."
			},
			innocent: [
				"The second reads hard efforts low: one-sided meters do when the balance of the legs shifts.",
				"The meters sit on different sides of the chain, and the loss in the chain is a smaller share at high power.",
				"The trainer runs out of its calibrated range."
			],
			settles: ["Steps of two minutes at four powers, in two gears each, with both meters.", "The same ride with a third meter."],
			source: {
				"kind": "published",
				"citation": "Bias of honest meters that grows with cadence: 1.2, 2.7 and 3.5 % at 70, 85 and 100 rpm (Pallarés & Lillo-Bevia 2018, J Sports Sci Med 17:305-311); a trainer in set-power mode -1.1 % at 250-700 W and 13.0 % at 750-999 W (Zadow et al. 2016, Int J Sports Physiol Perform 11:1115-1117). Honest spread from simulated rides."
			},
			examples: [
				{
					"value": 1.5,
					"interval": [.8, 2.2],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1
						},
						"field": {
							"centre": 0,
							"spread": 1.6
						}
					},
					"level": "none"
				},
				{
					"value": 8,
					"interval": [7, 9],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1
						},
						"field": {
							"centre": 0,
							"spread": 1.6
						}
					},
					"level": "query"
				},
				{
					"value": -8,
					"interval": [-9, -7],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1
						},
						"field": {
							"centre": 0,
							"spread": 1.6
						}
					},
					"level": "query"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "cadence-dependent-bias",
			title: "The difference depends on cadence",
			family: "agreement",
			question: "Does the difference depend on cadence, gear or flywheel speed?",
			measure: "cadence-dependence",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 20,
				"mostInflation": 5,
				"lowQuantile": .05,
				"highQuantile": .95,
				"leastRange": 10,
				"declaredSpread": 1,
				"fieldSpread": 1.8
			},
			needs: [
				"power",
				"second recording",
				"cadence"
			],
			limits: { "query": {
				"at least": 4,
				"at most": -4,
				"of": "declared spread",
				"end": "estimate"
			} },
			highest: "query",
			ceilings: [],
			claims: {
				"above": "From {from} to {to}, the primary rises by {value} against the second, at equal time and power.",
				"below": "From {from} to {to}, the primary falls by {value} against the second, at equal time and power.",
				"fine": "From {from} to {to}, the difference of the meters changes by {value}, no more than honest pairs do."
			},
			innocent: [
				"The trainer reads differently at slow and fast flywheel speeds: another gear would show it.",
				"A one-sided meter: the balance of the legs changes with cadence.",
				"Oval chainrings, which meters that assume a steady crank read high."
			],
			settles: ["Steps of two minutes at four powers, in two gears each, with both meters.", "The same ride with a third meter."],
			source: {
				"kind": "published",
				"citation": "Bias of honest meters that grows with cadence: 1.2, 2.7 and 3.5 % at 70, 85 and 100 rpm (Pallarés & Lillo-Bevia 2018, J Sports Sci Med 17:305-311); a trainer in set-power mode -1.1 % at 250-700 W and 13.0 % at 750-999 W (Zadow et al. 2016, Int J Sports Physiol Perform 11:1115-1117). Honest spread from simulated rides."
			},
			examples: [
				{
					"value": 1.5,
					"interval": [.8, 2.2],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1
						},
						"field": {
							"centre": 0,
							"spread": 1.6
						}
					},
					"level": "none"
				},
				{
					"value": 8,
					"interval": [7, 9],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1
						},
						"field": {
							"centre": 0,
							"spread": 1.6
						}
					},
					"level": "query"
				},
				{
					"value": -8,
					"interval": [-9, -7],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1
						},
						"field": {
							"centre": 0,
							"spread": 1.6
						}
					},
					"level": "query"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "sprint-overshoot",
			title: "Sprints read higher than the rest",
			family: "agreement",
			question: "Are sprints higher on the primary, beyond the steady difference of the two meters?",
			measure: "sprint-excess",
			subjects: "pairs",
			options: {
				"roomSeconds": 4,
				"shortSeconds": 8,
				"mostDetailRatio": 16,
				"declaredSpread": 3,
				"fieldSpread": 5
			},
			needs: ["power", "second recording"],
			limits: {
				"query": {
					"at least": 3,
					"at most": -5,
					"of": "declared spread",
					"end": "estimate"
				},
				"refer": {
					"at least": 3.4,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "refer",
			ceilings: [{
				"when": "short sprints",
				"level": "note",
				"why": "the sprints are shorter than 8 s, so averaging decides how high they read"
			}, {
				"when": "unequal averaging",
				"level": "note",
				"why": "one meter averages over many more seconds than the other"
			}],
			claims: {
				"above": "In {efforts|sprint|sprints} the primary reads {value} above what its steady difference to the second ({steady}) would have it read; {highest} in the highest.",
				"below": "In {efforts|sprint|sprints} the primary reads {value} against its steady difference to the second ({steady}).",
				"fine": "In {efforts|sprint|sprints} the primary differs by {value} from its steady difference to the second ({steady}), no more than honest pairs do."
			},
			innocent: [
				"The second reads sprints low: some pedal meters lose a third of the power of a sprint in a low gear.",
				"One of the meters averages over a few seconds, or holds the last value.",
				"Few sprints: honest meters lie several percent apart in a single one."
			],
			settles: [
				"Three sprints of ten seconds in a high gear with both meters, after a zero offset.",
				"The same sprints with a third meter.",
				"The settings page of the recorder, for its averaging."
			],
			source: {
				"kind": "common practice",
				"note": "A quarter above an otherwise agreeing meter is unusable for racing. Honest scatter of single sprints: 6.3 ± 38.9 W in 30 s efforts (Nimmerichter et al. 2017, Int J Sports Med, doi 10.1055/s-0043-101909); sprint ratio 0.975 of the average ratio between two honest meters (computed from Gardner et al. 2004)."
			},
			examples: [
				{
					"value": 5,
					"interval": [2, 8],
					"count": 6,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.2
						},
						"field": {
							"centre": 0,
							"spread": 5.2
						}
					}
				},
				{
					"value": 15,
					"interval": [12, 18],
					"count": 6,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.2
						},
						"field": {
							"centre": 0,
							"spread": 5.2
						}
					}
				},
				{
					"value": 27,
					"interval": [23, 31],
					"count": 6,
					"level": "refer",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.2
						},
						"field": {
							"centre": 0,
							"spread": 5.2
						}
					}
				},
				{
					"value": 27,
					"interval": [23, 31],
					"count": 6,
					"level": "note",
					"circumstances": ["short sprints"],
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.2
						},
						"field": {
							"centre": 0,
							"spread": 5.2
						}
					}
				}
			],
			explains: [
				"power-dependent-bias",
				"zero-offset",
				"mean-bias"
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "late-drift",
			title: "The difference grows through the ride",
			family: "agreement",
			question: "Does the primary rise against the second from start to finish?",
			measure: "difference-trend",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 16,
				"mostInflation": 5,
				"declaredSpread": 1.2,
				"fieldSpread": 2.5,
				"stepBlocks": 6,
				"stepEvidence": 12
			},
			needs: ["power", "second recording"],
			limits: {
				"query": {
					"at least": 3.6,
					"at most": -5,
					"of": "declared spread",
					"end": "estimate"
				},
				"refer": {
					"at least": 4,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "refer",
			ceilings: [{
				"when": "in one step",
				"level": "query",
				"why": "the difference changed in one step, as after a zero offset or when a pedal drops out: that is no drift"
			}],
			claims: {
				"above": "Against the second, the primary rises by {value} over the race ({minutes}): {early} in its first third, {late} in its last.",
				"below": "Against the second, the primary falls by {value} over the race ({minutes}): {early} in its first third, {late} in its last.",
				"fine": "Against the second, the primary changes by {value} over the race ({minutes}), no more than honest pairs do."
			},
			innocent: [
				"One of the units warmed up after it was zeroed or spun down: readings move by 0.40 to 0.65 % per °C.",
				"The second drifts the other way: a pair alone cannot say which of the two moved.",
				"The room warmed, or the ride went from shade into sun."
			],
			settles: [
				"A spin-down or zero offset after ten minutes of warming up, before the next race.",
				"The same ride once more with both meters, zeroed at its middle.",
				"Heart rate, if it was recorded: it tells whether the effort rose as well."
			],
			source: {
				"kind": "common practice",
				"note": "A trend that is plain in 5-minute means is looked at; temperature moves honest readings by 0.40 to 0.65 % per °C (Gardner et al. 2004, Med Sci Sports Exerc 36:1252-1258), from which the honest spread is taken."
			},
			examples: [
				{
					"value": 2,
					"interval": [1.2, 2.8],
					"count": 55,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.3
						},
						"field": {
							"centre": 0,
							"spread": 2.6
						}
					}
				},
				{
					"value": 8,
					"interval": [7, 9],
					"count": 55,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.3
						},
						"field": {
							"centre": 0,
							"spread": 2.6
						}
					}
				},
				{
					"value": 16,
					"interval": [15, 17],
					"count": 55,
					"level": "refer",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.3
						},
						"field": {
							"centre": 0,
							"spread": 2.6
						}
					}
				}
			],
			explains: ["mean-bias", "warmup-crossing"]
		},
		{
			$schema: "./rule.schema.json",
			id: "warmup-crossing",
			title: "The primary passes the second on its way up",
			family: "agreement",
			question: "When did the difference between the meters change its sign?",
			measure: "crossing-time",
			subjects: "pairs",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 16,
				"mostInflation": 5,
				"leastGrowth": 2
			},
			needs: ["power", "second recording"],
			limits: { "note": {
				"at least": 0,
				"of": "value",
				"end": "estimate"
			} },
			highest: "note",
			ceilings: [],
			claims: {
				"above": "{value} into the race the primary passed the second, from {direction}.",
				"fine": "The primary did not pass the second."
			},
			innocent: ["A unit that was zeroed or spun down cold reads low at first and high once it is warm."],
			settles: ["A spin-down or zero offset after ten to twenty minutes of warming up."],
			source: {
				"kind": "common practice",
				"note": "Warm-up drift often crosses zero 20 to 25 minutes in."
			},
			examples: [{
				"value": 22,
				"interval": [18, 27],
				"count": 100,
				"level": "note"
			}, {
				"value": -1,
				"interval": [-2, 0],
				"count": 100,
				"level": "none"
			}]
		},
		{
			$schema: "./rule.schema.json",
			id: "response-lag",
			title: "One meter averages longer than the other",
			family: "agreement",
			question: "Is one of the meters slower than the other?",
			measure: "averaging-difference",
			subjects: "pairs",
			options: {
				"longestSeconds": 15,
				"lagSeconds": 4,
				"leastSeconds": 300
			},
			needs: ["power", "second recording"],
			limits: { "note": {
				"at least": 4,
				"of": "value",
				"end": "estimate"
			} },
			highest: "note",
			ceilings: [],
			claims: {
				"above": "The {smoother} averages {value} beside the other meter; sprints and short efforts are compared with that in mind.",
				"fine": "Neither meter averages much longer than the other ({value} at most)."
			},
			innocent: ["The head unit or the trainer is set to show an average of several seconds."],
			settles: ["The averaging setting of the recorder."],
			source: {
				"kind": "common practice",
				"note": "Averaging of three seconds is a usual setting; longer averaging lowers short peaks."
			},
			examples: [{
				"value": 2,
				"interval": [2, 2],
				"count": 3e3,
				"level": "none"
			}, {
				"value": 10,
				"interval": [10, 10],
				"count": 3e3,
				"level": "note"
			}]
		},
		{
			$schema: "./rule.schema.json",
			id: "odd-one-out",
			title: "One meter of three lies apart",
			family: "agreement",
			question: "With three meters or more, which one is off?",
			measure: "distance-from-others",
			subjects: "submission",
			options: {
				"blockSeconds": 30,
				"leastBlocks": 15,
				"mostOfDistance": .5
			},
			needs: ["power", "two second recordings"],
			limits: {
				"note": {
					"at least": 1.8,
					"at most": -1.8,
					"of": "field spread",
					"end": "estimate"
				},
				"query": {
					"at least": 2.9,
					"at most": -2.9,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "query",
			ceilings: [{
				"when": "no odd one",
				"level": "none",
				"why": "the other meters lie as far apart among themselves"
			}, {
				"when": "not the primary",
				"level": "note",
				"why": "it is not the primary that lies apart"
			}],
			claims: {
				"above": "Of {meters} meters, the {meter} reads {value} from the mean of the others, which lie {apart} apart among themselves.",
				"below": "Of {meters} meters, the {meter} reads {value} from the mean of the others, which lie {apart} apart among themselves.",
				"fine": "Of {meters} meters none lies apart; the farthest is the {meter}, at {value} from the others."
			},
			innocent: ["Two meters can be wrong together: two of one make on one bicycle may share their error.", "A zero offset or spin-down was not done on one of them."],
			settles: ["The same three meters once more, after a zero offset and a spin-down.", "A meter of a fourth kind."],
			source: {
				"kind": "published",
				"citation": "Scatter of honest meters 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461); scatter of each of three meters by Grubbs 1948, J Am Stat Assoc 43:243-264."
			},
			examples: [
				{
					"value": 3,
					"interval": [3, 3],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.9
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					},
					"level": "none"
				},
				{
					"value": 9,
					"interval": [9, 9],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.9
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					},
					"level": "note"
				},
				{
					"value": 14,
					"interval": [14, 14],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.9
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					},
					"level": "query"
				},
				{
					"value": 14,
					"interval": [14, 14],
					"count": 100,
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.9
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					},
					"circumstances": ["not the primary"],
					"level": "note"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "above-history",
			title: "Power beyond the rider's own history",
			family: "physiology",
			question: "Is the race's power–duration curve beyond what the rider's past rides allow?",
			measure: "excess-over-history",
			subjects: "rider",
			options: {
				"durations": [
					5,
					15,
					30,
					60,
					120,
					180,
					300,
					480,
					720,
					1200,
					1800,
					2400,
					3600
				],
				"withinRider": [
					5,
					5,
					4.5,
					4,
					3,
					2.2,
					2,
					1.8,
					1.6,
					1.5,
					1.5,
					1.7,
					2
				],
				"allOutRatios": [
					2.2,
					1.9,
					1.6,
					1.35,
					1.15,
					0,
					0,
					0,
					0,
					0,
					0,
					0,
					0
				],
				"anchor": 300,
				"betweenMeters": 4,
				"betweenSettings": 3,
				"swapped": .015,
				"drift": 1.2,
				"oldest": 540,
				"reach": 10,
				"near": 4,
				"fewest": 2,
				"shortfall": 5,
				"heldBackUnseen": 2,
				"allOutShares": [
					.05,
					.2,
					.5,
					.8
				],
				"easyHeartRate": .86,
				"heartRateSlack": 2,
				"easyFrom": 180,
				"controlled": .3,
				"kinReach": 1,
				"kinFrom": 180,
				"kinError": 1.5,
				"reserve": 60,
				"tiring": 4.5,
				"kinship": 2,
				"rareness": .01
			},
			needs: ["power", "history"],
			limits: {
				"note": {
					"at least": 1.64,
					"of": "field spread",
					"end": "estimate"
				},
				"query": {
					"at least": 2.33,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "The best {duration} of the race stands at {watts}: {value} above the {ability} that {rides|past ride|past rides} show. Of honest races ridden all out, about 1 in {oneIn} stands this far above; that does not say how likely this rider is honest.",
				"fine": "The best {duration} of the race stands at {watts}, {value} from the {ability} that {rides|past ride|past rides} show: within what they allow ({allowed})."
			},
			innocent: [
				"The rider has become stronger, or went all out for the first time: past rides show only what was asked of them.",
				"Another meter, or the same one calibrated anew: honest meters lie several percent apart.",
				"A personal best on a great day: 2 to 3 % is usual."
			],
			settles: [
				"More past rides: races and hard efforts above all, with heart rate.",
				"A second recording of the next race from another meter.",
				"The same effort once more at a supervised ride."
			],
			source: {
				"kind": "published",
				"citation": "Range of 99 %, as for critical power over seasons in Puchowicz et al. 2018 (Front Physiol 9:643). Day-to-day variation of all-out power: 1.3 to 2 % over 4 to 20 min (MacInnis et al. 2019, IJSPP 14:38), 3.3 % in sprints (Martin et al. 1997, MSSE 29:1505-1512); meters in the field: 3.2 % (Maier et al. 2017, IJSM 38:456-461). The rest is set so that simulated honest riders stay clear."
			},
			examples: [
				{
					"value": 2.5,
					"interval": [.4, 5],
					"count": 6,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.6
						},
						"field": {
							"centre": 0,
							"spread": 3.6
						}
					}
				},
				{
					"value": 7,
					"interval": [4, 10],
					"count": 6,
					"level": "note",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.6
						},
						"field": {
							"centre": 0,
							"spread": 3.6
						}
					}
				},
				{
					"value": 12,
					"interval": [8, 15],
					"count": 6,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 3.6
						},
						"field": {
							"centre": 0,
							"spread": 3.6
						}
					}
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "late-power-rise",
			title: "More watts at the same heart rate late in the race",
			family: "physiology",
			question: "Does the meter show more watts at the same heart rate late in the race than early?",
			measure: "late-power-excess",
			subjects: "primary",
			options: {
				"leadSeconds": 600,
				"finalSeconds": 90,
				"blockSeconds": 30,
				"leastBlocks": 30,
				"timeConstants": [
					30,
					45,
					60,
					80,
					110
				],
				"capShare": 1.5,
				"capSeconds": 1200,
				"usualPerHour": -8,
				"usualSpread": 4,
				"otherSpread": 1.5,
				"leastGain": 4,
				"mostInflation": 5,
				"leastShared": .3,
				"stuckSeconds": 30,
				"cadenceBeats": 1,
				"cadenceSeconds": 60
			},
			needs: ["power", "heart rate"],
			limits: {
				"note": {
					"at least": 2.3,
					"of": "field spread",
					"end": "estimate"
				},
				"query": {
					"at least": 3.4,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "At the same heart rate the meter shows {value} ({watts}) more at the end of the race than at its start ({minutes}). Riders usually go the other way: {usual} in this time.",
				"fine": "At the same heart rate the watts change by {value} over the race ({minutes}); {usual} would be usual."
			},
			innocent: [
				"A fan was switched on, a window opened, the air became cooler: heart rate falls at the same power.",
				"The strap settled, or the sensor at the wrist found the pulse only later.",
				"Recovery from a hard start: heart rate was still high from it.",
				"The trainer or meter warmed up: readings move by 0.40 to 0.65 % per °C."
			],
			settles: [
				"A word on fan, room and strap.",
				"A spin-down or zero offset after ten minutes of warming up, before the next race.",
				"A second recording of the next race from another meter."
			],
			source: {
				"kind": "common practice",
				"note": "At equal power heart rate rises through a ride (Coyle & González-Alonso 2001, Exerc Sport Sci Rev 29:88-92; slow component at all intensities: Teso et al. 2022, MSSE 54:655). How much in watts, and the limit, from simulated honest races: 1 of 330 in even conditions beyond the limit; a fan switched on in the middle can go beyond it."
			},
			examples: [
				{
					"value": -5,
					"interval": [-11, 1],
					"count": 80,
					"level": "none",
					"expected": {
						"declared": {
							"centre": -6,
							"spread": 4.5
						},
						"field": {
							"centre": -6,
							"spread": 4.5
						}
					}
				},
				{
					"value": 5,
					"interval": [-1, 11],
					"count": 80,
					"level": "note",
					"expected": {
						"declared": {
							"centre": -6,
							"spread": 4.5
						},
						"field": {
							"centre": -6,
							"spread": 4.5
						}
					}
				},
				{
					"value": 16,
					"interval": [10, 22],
					"count": 80,
					"level": "query",
					"expected": {
						"declared": {
							"centre": -6,
							"spread": 4.5
						},
						"field": {
							"centre": -6,
							"spread": 4.5
						}
					}
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "sprint-shape",
			title: "Sprints out of proportion",
			family: "physiology",
			question: "Do sprint peaks stand out of proportion to the rider's own longer bests?",
			measure: "sprint-disproportion",
			subjects: "rider",
			options: {
				"sprint": 5,
				"longer": [60, 300],
				"near": .9,
				"fewest": 3,
				"sprintRatio": 2.2,
				"spread": 5
			},
			needs: ["power", "history"],
			limits: {
				"note": {
					"at least": 2.4,
					"of": "field spread",
					"end": "estimate"
				},
				"query": {
					"at least": 3.2,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "The best {sprint} of the race, {peak}, stand {value} above the best of the past rides ({past}) beyond what longer bests do ({level}).",
				"fine": "The best {sprint} of the race, {peak}, are in proportion with the past rides ({past}; longer bests {level} above theirs)."
			},
			innocent: [
				"A fresher or better sprint than in the past rides, or one from a lower gear.",
				"The meter reads sprints high: some trainers do.",
				"A race so easy that its longer bests are low."
			],
			settles: ["Three sprints of ten seconds with a second meter.", "More past rides with sprints."],
			source: {
				"kind": "common practice",
				"note": "Sprint power varies by 3.3 % within a session (Martin et al. 1997, MSSE 29:1505-1512). The limit lies beyond all of 714 simulated honest races and of 121 personal bests."
			},
			examples: [
				{
					"value": 4,
					"interval": [4, 4],
					"count": 5,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 5
						},
						"field": {
							"centre": 0,
							"spread": 5
						}
					}
				},
				{
					"value": 13,
					"interval": [13, 13],
					"count": 5,
					"level": "note",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 5
						},
						"field": {
							"centre": 0,
							"spread": 5
						}
					}
				},
				{
					"value": 25,
					"interval": [25, 25],
					"count": 5,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 5
						},
						"field": {
							"centre": 0,
							"spread": 5
						}
					}
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "reserve-overdrawn",
			title: "More work above critical power than the rider's reserve",
			family: "physiology",
			question: "Did the race draw more work above critical power than the rider's reserve can hold?",
			measure: "reserve-share",
			subjects: "rider",
			options: {
				"durations": [
					180,
					300,
					480,
					720,
					1200,
					1800
				],
				"fewest": 4,
				"widest": 2.5,
				"heartRateSlack": 1,
				"cpSpread": 6.5,
				"reserveSpread": 28,
				"generous": 2,
				"leastReserve": 10
			},
			needs: [
				"power",
				"heart rate",
				"history"
			],
			limits: {
				"note": {
					"at least": 100,
					"of": "value",
					"end": "estimate"
				},
				"query": {
					"at least": 130,
					"of": "value",
					"end": "estimate"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "The race drew {drawn} at once from the reserve above critical power: {value} of the {granted} that {efforts|all-out effort|all-out efforts} leave possible, even with a critical power of {critical} ({model}; fitted: {fitted} and {fittedReserve}) and a reserve that refills as fast as it empties.",
				"fine": "The race drew {drawn} at once from the reserve above critical power: {value} of the {granted} that the history leaves possible."
			},
			innocent: [
				"The past efforts were not all-out, or another meter measured them.",
				"The rider has become stronger since.",
				"Critical power is a model: it hangs on which efforts it is fitted to."
			],
			settles: ["More past rides with hard efforts of 3 to 20 min, with heart rate.", "A second recording of the next race from another meter."],
			source: {
				"kind": "published",
				"citation": "Reserve and critical power by Morton 1996 (Ergonomics 39:611-619); repeatability of W′ 28 % (Johnson et al. 2011), of critical power in the field 2.4 to 6.5 % (Karsten et al. 2015, EJAP 115:197-204). It argues from the same history as above-history: the two are one piece of evidence."
			},
			examples: [
				{
					"value": 55,
					"interval": [55, 55],
					"count": 5,
					"level": "none"
				},
				{
					"value": 110,
					"interval": [110, 110],
					"count": 5,
					"level": "note"
				},
				{
					"value": 140,
					"interval": [140, 140],
					"count": 5,
					"level": "query"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "heart-rate-unresponsive",
			title: "Heart rate does not answer to power",
			family: "physiology",
			question: "Does heart rate answer to power?",
			measure: "unresponsive-share",
			subjects: "primary",
			options: {
				"windowSeconds": 180,
				"leastWindows": 6,
				"leastKnown": .8,
				"leastVariation": .05,
				"timeConstants": [
					30,
					50,
					80
				],
				"lags": [
					0,
					4,
					8
				],
				"leastCorrelation": .45,
				"faultShare": .05,
				"stuckSeconds": 30,
				"cadenceBeats": 1,
				"cadenceSeconds": 60
			},
			needs: ["power", "heart rate"],
			limits: {
				"note": {
					"at least": .06,
					"of": "value",
					"end": "cautious"
				},
				"query": {
					"at least": .09,
					"of": "value",
					"end": "cautious"
				}
			},
			highest: "query",
			ceilings: [],
			claims: {
				"above": "In {silent} of {windows|window|windows} with changing power heart rate does not answer to it ({value}).",
				"fine": "Heart rate answers to power in all but {silent} of {windows|window|windows} with changing power."
			},
			innocent: [
				"A sensor at the wrist, or a dry strap, that shows something like a heart rate.",
				"The strap of somebody else in the room was picked up.",
				"Medicine or a pacemaker that holds the pulse."
			],
			settles: ["A chest strap, moistened, at the next race.", "The original file of the head unit or watch."],
			source: {
				"kind": "common practice",
				"note": "Heart rate follows power with a time constant of about a minute (55.7 and 59.5 s, doi 10.1186/s12938-015-0112-7); the limit lies beyond all of 231 simulated honest rides."
			},
			examples: [
				{
					"value": .05,
					"interval": [.01, .24],
					"count": 20,
					"level": "none"
				},
				{
					"value": .2,
					"interval": [.08, .42],
					"count": 20,
					"level": "note"
				},
				{
					"value": .5,
					"interval": [.3, .7],
					"count": 20,
					"level": "query"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "implied-mass",
			title: "Climbs like a lighter rider",
			family: "physiology",
			question: "Does speed on climbs imply a lighter rider than declared?",
			measure: "mass-shortfall",
			subjects: "primary",
			options: {
				"stretchSeconds": 30,
				"leastStretches": 5,
				"steepGrade": .04,
				"leastSpeed": 1.5,
				"bicycleKg": 8,
				"dragArea": .22,
				"rolling": .004,
				"usualCelsius": 20,
				"mostScatter": .1,
				"fieldSpread": 3.2,
				"otherSpread": 2.5
			},
			needs: [
				"power",
				"speed",
				"altitude",
				"body mass"
			],
			limits: {
				"note": {
					"at least": 2.3,
					"of": "declared spread",
					"end": "estimate"
				},
				"query": {
					"at least": 3.6,
					"of": "declared spread",
					"end": "estimate"
				}
			},
			highest: "query",
			ceilings: [{
				"when": "outdoors",
				"level": "note",
				"why": "outdoors wind, draft and barometer blur what speed says of mass"
			}],
			claims: {
				"above": "Speed on {stretches|steep stretch|steep stretches} implies a rider of {implied}, {value} less than the {declared} declared (bicycle taken as {bicycle}).",
				"fine": "Speed on {stretches|steep stretch|steep stretches} implies a rider of {implied}; declared were {declared}."
			},
			innocent: [
				"The mass in the platform's profile is an old one.",
				"The meter reads low: less power at the same speed looks like a lighter rider.",
				"A lighter bicycle than the one assumed."
			],
			settles: ["A photo of the scale, and of the mass in the platform's profile.", "A spin-down or zero offset before the next race."],
			source: {
				"kind": "published",
				"citation": "Road power model of Martin et al. 1998, J Appl Biomech 14:276-291; meters in the field scatter by 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461); drag is taken low, as in a bunch, in the rider's favour; what bicycle and grade add is common practice, no source."
			},
			examples: [
				{
					"value": 1,
					"interval": [0, 2],
					"count": 12,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 2
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					}
				},
				{
					"value": 5,
					"interval": [4, 6],
					"count": 12,
					"level": "note",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 2
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					}
				},
				{
					"value": 12,
					"interval": [11, 13],
					"count": 12,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 2
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					}
				},
				{
					"value": 12,
					"interval": [11, 13],
					"count": 12,
					"level": "note",
					"circumstances": ["outdoors"],
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 2
						},
						"field": {
							"centre": 0,
							"spread": 3.9
						}
					}
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "impossible-torque",
			title: "Crank torque beyond people",
			family: "physiology",
			question: "Was a crank torque held that nobody reaches at that cadence?",
			measure: "torque-share",
			subjects: "primary",
			options: {
				"standstill": 326,
				"slope": 1.04,
				"massKg": 86,
				"holdSeconds": 3,
				"leastCadence": 40,
				"steadyCadence": 10,
				"leastSeconds": 120
			},
			needs: ["power", "cadence"],
			limits: { "query": {
				"at least": 100,
				"of": "value",
				"end": "cautious"
			} },
			highest: "query",
			ceilings: [],
			claims: {
				"above": "For {seconds} the cranks show {torque} at {cadence}: {value} of the {possible} that elite sprinters reach at most.",
				"fine": "The highest crank torque held for {seconds} is {torque} at {cadence}: {value} of what elite sprinters reach at most."
			},
			innocent: [
				"Cadence reads low: a magnet missed every other turn, or the trainer estimates it.",
				"The meter reads high, or both legs were counted twice.",
				"Power and cadence come from different sensors, and one lags behind the other."
			],
			settles: ["A cadence source on the crank or shoe at the next race.", "A second recording of the next race from another meter."],
			source: {
				"kind": "published",
				"citation": "Seven elite sprinters: highest torque 266 ± 20 N·m falling by 1.04 N·m per rpm, at 86.2 ± 6.1 kg (Gardner et al. 2007, per revolution); mean + 3 SD, in proportion to body mass above 86 kg."
			},
			examples: [
				{
					"value": 55,
					"interval": [55, 55],
					"count": 3e3,
					"level": "none"
				},
				{
					"value": 92,
					"interval": [92, 92],
					"count": 3e3,
					"level": "none"
				},
				{
					"value": 130,
					"interval": [130, 130],
					"count": 3e3,
					"level": "query"
				}
			]
		},
		{
			$schema: "./rule.schema.json",
			id: "above-human-record",
			title: "Power beyond published records",
			family: "physiology",
			question: "Is the power for its duration beyond the highest published for people?",
			measure: "excess-over-record",
			subjects: "primary",
			options: {
				"durations": [
					5,
					10,
					15,
					20,
					30,
					45,
					60,
					90,
					120,
					180,
					240,
					300,
					480,
					720,
					1200,
					1800,
					2400,
					3600
				],
				"fieldSpread": 3.2,
				"massSpread": 1
			},
			needs: ["power", "body mass"],
			limits: {
				"note": {
					"at least": 0,
					"of": "value",
					"end": "estimate"
				},
				"query": {
					"at least": 1.65,
					"of": "field spread",
					"end": "estimate"
				},
				"refer": {
					"at least": 3.1,
					"of": "field spread",
					"end": "estimate"
				}
			},
			highest: "refer",
			ceilings: [],
			claims: {
				"above": "Over {duration} the meter shows {perKg}: {value} above the {record} that are published as the highest ({class}).",
				"fine": "Over {duration} the meter shows {perKg}; the highest published are {record} ({class})."
			},
			innocent: [
				"The meter reads high: one in ten honest meters is off by more than 5 %.",
				"The stated body mass is too low, or in other units.",
				"The rider is among the best there are."
			],
			settles: [
				"A photo of the scale.",
				"A second recording of the next race from another meter.",
				"The same effort at a supervised ride."
			],
			source: {
				"kind": "published",
				"citation": "Top values for 5 s, 1 min, 5 min and threshold, women and men, in Allen, Coggan & McGregor, Training and Racing with a Power Meter, 3rd ed., straight between them on logarithmic axes; meters in the field scatter by 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461)."
			},
			examples: [
				{
					"value": -30,
					"interval": [-30, -30],
					"count": 18,
					"level": "none",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.5
						},
						"field": {
							"centre": 0,
							"spread": 3.35
						}
					}
				},
				{
					"value": 3,
					"interval": [3, 3],
					"count": 18,
					"level": "note",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.5
						},
						"field": {
							"centre": 0,
							"spread": 3.35
						}
					}
				},
				{
					"value": 7,
					"interval": [7, 7],
					"count": 18,
					"level": "query",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.5
						},
						"field": {
							"centre": 0,
							"spread": 3.35
						}
					}
				},
				{
					"value": 15,
					"interval": [15, 15],
					"count": 18,
					"level": "refer",
					"expected": {
						"declared": {
							"centre": 0,
							"spread": 1.5
						},
						"field": {
							"centre": 0,
							"spread": 3.35
						}
					}
				}
			]
		}
	].map(withoutSchema),
	grades: withoutSchema({
		$schema: "./grades.schema.json",
		queriesThatRefer: null,
		why: "A query is a question to the rider. Two questions with innocent answers do not make one charge."
	}),
	measures
};
/** The shipped rules with an event's files laid over, or everything that is wrong with those. */
function layOver(files, name) {
	return loadRules(shipped, files, name);
}
// src/cli/rule-folder.ts
/**
* The shipped rules, with an event's folder laid over where one is named.
*
* @throws AggregateError of Problems: everything that is wrong with the folder's files at once
*/
async function rulesGiven(io, folder) {
	const given = folder === void 0 ? {
		files: [],
		inputs: []
	} : await filesOf(io, folder);
	const name = folder === void 0 ? "shipped" : path.basename(path.resolve(io.cwd, folder));
	const { set, problems } = await layOver(given.files, name);
	if (set === null) throw new AggregateError(problems);
	return {
		set,
		inputs: given.inputs
	};
}
async function filesOf(io, folder) {
	const place = path.resolve(io.cwd, folder);
	const named = (await filesIn(place)).filter(({ name }) => name.endsWith(".json") && !name.endsWith(".schema.json"));
	if (named.length === 0) throw new Problem({
		code: "rule-wrong",
		what: "there is no rule file in this folder",
		where: folder,
		hint: "A rule file is named <id>.rule.json, after the rule that it changes; wattassay rules lists the ids"
	});
	const files = [];
	const inputs = [];
	for (const { path: at, name } of named) {
		const { bytes } = await readFileSafely(at, {
			most: limits$37.factsBytes,
			root: place,
			shown: name
		});
		files.push({
			name,
			text: new TextDecoder().decode(bytes)
		});
		inputs.push(await inputOf("rules", {
			name,
			bytes
		}));
	}
	return {
		files,
		inputs
	};
}
// src/cli/say.ts
/** Text in a style where the stream shows colour. */
function painter(stream, env) {
	const colour = coloured(stream, env);
	return (style, text) => colour ? styleText(style, text, { validateStream: false }) : text;
}
/** A remark on standard error: never a part of the output. */
function remark({ stderr }, text) {
	stderr.write(`${clean(text)}\n`);
}
/** Why a command could not run: one line a problem. */
function complain({ stderr, env }, problems) {
	const paint = painter(stderr, env);
	for (const problem of problems) stderr.write(`${paint("red", "error:")} ${clean(sentence$1(problem))}\n`);
}
// src/cli/status.ts
/** What a program that runs this one is told. */
const status = {
	done: 0,
	reached: 1,
	couldNotRun: 2
};
const failLevels = [
	"note",
	"query",
	"refer",
	"never"
];
/**
* The exit status of an audit, decided here and nowhere else. A submission that lacks something never
* passes, also where a query hides that behind its grade: a further fault must not improve the outcome.
*/
function statusOf(report, failOn) {
	if (failOn === "never") return status.done;
	const lacks = report.grade === "incomplete" || report.missing.length > 0 || report.submission.unreadable.length > 0;
	const reached = rank(failOn) <= rank(report.grade === "query" || report.grade === "refer" ? report.grade : "none") || report.findings.some((finding) => rank(finding.level) >= rank(failOn));
	return lacks || reached ? status.reached : status.done;
}
// src/cli/audit.ts
const examples$1 = `
Examples:
  $ wattassay audit trainer.fit
  $ wattassay audit trainer.fit --second pedals.fit --out report.html
  $ wattassay audit trainer.fit --second pedals.fit --mass 68 --class women \\
      --device primary=trainer,2,1.5 --device second=pedal,2,1 \\
      --start 2026-03-14T19:00:00+01:00 --finish 2026-03-14T20:04:00+01:00
  $ wattassay audit trainer.fit --history rides/ --rider rider.json --race race.json
  $ wattassay audit trainer.fit --rules our-rules/ --redact --format json --fail-on never

Recordings may be FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP.

Exit status: 0 below --fail-on; 1 the submission reached it, or is incomplete; 2 could not run.
`;
/** `wattassay audit PRIMARY`. `done` is told the exit status. */
function auditCommand(io, done) {
	return new Command("audit").summary("audit one submission: a recording, and what there is beside it").description("Audits one submission and reports what needs an explanation, with the evidence.").argument("<primary>", "the recording that the result rests on").addOption(new Option("--second <file>", "the same ride by another meter (repeatable)").argParser(each)).addOption(new Option("--history <path>", "the rider's earlier rides: a folder or ZIP of recordings, or a profile")).addOption(options$36.rider()).addOption(options$36.mass()).addOption(options$36.class()).addOption(options$36.device()).addOption(options$36.race()).addOption(options$36.start()).addOption(options$36.finish()).addOption(options$36.kind()).addOption(options$36.require()).addOption(options$36.rules()).addOption(new Option("--format <form>", "what to print; text unless --out is given").choices(forms)).addOption(new Option("--out <file>", "write the report to a file; .txt, .json, .html, .md or .csv chooses the form (repeatable)").argParser(each)).addOption(new Option("--fail-on <level>", "exit with status 1 from this level on").choices(failLevels).default("refer")).option("--redact", "keep names, heart rate and body mass out of every output, and still judge by them").addHelpText("after", examples$1).action(async (primary, given) => done(await run$1(io, primary, given)));
}
async function run$1(io, primary, given) {
	const outs = (given.out ?? []).map((file) => ({
		file,
		form: formOf(file)
	}));
	const progress = progressOn(io);
	try {
		const rules = await rulesGiven(io, given.rules);
		const submission = await submissionGiven(io, primary, given, (what) => progress.now(what));
		const inputs = [...submission.otherInputs, ...rules.inputs];
		const report = await audit({
			...submission,
			otherInputs: inputs
		}, rules.set, (stage) => progress.now(stage));
		progress.clear();
		await tell(io, given.redact ? redact(report) : report, given, outs);
		return statusOf(report, given.failOn);
	} finally {
		progress.clear();
	}
}
async function submissionGiven(io, primary, given, onFile) {
	const rider = await riderGiven(io, given);
	const race = await raceGiven(io, given);
	const { devices } = rider.facts;
	const history = given.history === void 0 ? null : await historyGiven(io, given.history, {
		...devices === void 0 ? {} : { devices },
		onFile,
		onTrouble: (said) => given.redact || remark(io, `left out: ${said}`)
	});
	return {
		primary: await readNamed(io, primary, limits$37.recordingBytes),
		...await secondsGiven(io, given.second ?? []),
		rider: rider.facts,
		race: race.facts,
		profile: history?.profile ?? null,
		otherInputs: [
			...rider.inputs,
			...race.inputs,
			...history?.inputs ?? []
		]
	};
}
/** A second that cannot be opened makes the submission incomplete; it does not stop the audit. */
async function secondsGiven(io, files) {
	const seconds = [];
	const unopened = [];
	for (const file of files) {
		const name = path.basename(file);
		try {
			seconds.push(await readNamed(io, file, limits$37.recordingBytes, name));
		} catch (error) {
			if (!(error instanceof Problem)) throw error;
			unopened.push({
				name,
				why: sentence$1(error)
			});
		}
	}
	return {
		seconds,
		unopened
	};
}
/** Files first: a report that could not be written must not look as if it had been. */
async function tell(io, report, { format }, outs) {
	for (const { file, form } of outs) {
		await writeWhole(path.resolve(io.cwd, file), await render(report, form));
		remark(io, `written: ${file}`);
	}
	const form = format ?? (outs.length === 0 ? "text" : null);
	if (form !== null) io.stdout.write(await renderTo(io, report, form));
	else remark(io, `${gradeWord(report.grade)}. ${reachSaid(report)}`);
}
// src/cli/profile.ts
const examples = `
Examples:
  $ wattassay profile rides/ --out profile.json
  $ wattassay profile new-rides/ --history profile.json --out profile.json
  $ wattassay audit trainer.fit --history profile.json

A profile holds the best mean power of each ride over some durations, no traces and no positions. It holds
heart rate, which is health data: keep it where only those see it who decide.
`;
/** `wattassay profile FOLDER`. `done` is told the exit status. */
function profileCommand(io, done) {
	return new Command("profile").summary("compile a rider's earlier rides into a small file").description("Compiles a folder or ZIP of a rider's earlier rides into a profile for --history.").argument("<folder>", "the recordings; folders in it are searched too").option("--out <file>", "write the profile to a file instead of printing it").option("--history <profile>", "an earlier profile to carry on: rides that it knows are not read again").addOption(options$36.rider()).addOption(options$36.device()).addHelpText("after", examples).action(async (folder, given) => done(await run(io, folder, given)));
}
async function run(io, folder, given) {
	const progress = progressOn(io);
	try {
		const { devices } = (await riderGiven(io, given)).facts;
		const previous = given.history === void 0 ? void 0 : (await profileGiven(io, given.history)).profile;
		const { profile } = await historyGiven(io, folder, {
			...devices === void 0 ? {} : { devices },
			...previous === void 0 ? {} : { previous },
			onFile: (name) => progress.now(name),
			onTrouble: (said) => remark(io, `left out: ${said}`)
		});
		progress.clear();
		const text = printProfile(profile);
		if (given.out === void 0) io.stdout.write(text);
		else await writeWhole(path.resolve(io.cwd, given.out), text);
		remark(io, summary(profile));
		return status.done;
	} finally {
		progress.clear();
	}
}
/** "41 rides; left out: 3 other sport, 1 duplicate". */
function summary({ rides, leftOut }) {
	const counts = /* @__PURE__ */ new Map();
	for (const { why } of leftOut) counts.set(why, (counts.get(why) ?? 0) + 1);
	const said = [...counts].map(([why, count]) => `${count} ${why}`).sort();
	const kept = `${rides.length} ${rides.length === 1 ? "ride" : "rides"}`;
	return said.length === 0 ? kept : `${kept}; left out: ${said.join(", ")}`;
}
// src/cli/differences.ts
/** Where two JSON values differ: fields by name, lists as a whole. */
function differences(before, after, path = []) {
	if (isFields(before) && isFields(after)) return [.../* @__PURE__ */ new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((name) => differences(before[name], after[name], [...path, name]));
	return JSON.stringify(before) === JSON.stringify(after) ? [] : [{
		path,
		before,
		after
	}];
}
function isFields(value) {
	return value !== null && typeof value === "object" && !Array.isArray(value);
}
// src/cli/show-rule.ts
const subjects = {
	primary: "the primary recording",
	recordings: "every recording",
	pairs: "the primary beside each second recording",
	rider: "the rider",
	submission: "the submission as a whole"
};
const spreads = {
	value: "",
	"declared spread": " spreads as declared",
	"field spread": " spreads as found in the field"
};
const ends = {
	cautious: "by the cautious end of the range",
	estimate: "by the value itself"
};
/** All that a rule says, for a reader: question, limits, numbers, words, source, examples. */
function showRule(rule, measure, width, paint) {
	const lines = [];
	const put = (text, indent = 0, lead = "") => {
		const pad = " ".repeat(indent);
		wrap(clean(text), Math.max(30, width - indent - lead.length)).forEach((line, i) => {
			lines.push(`${pad}${i === 0 ? lead : " ".repeat(lead.length)}${line}`.trimEnd());
		});
	};
	const part = (heading, items) => {
		if (items.length === 0) return;
		lines.push("", paint("underline", heading));
		for (const item of items) put(item, 2, "· ");
	};
	lines.push(`${paint("bold", rule.id)}  ${clean(rule.title)}`);
	put(rule.question);
	if (rule.off !== void 0) put(`Switched off: ${rule.off}`);
	lines.push("");
	put(`Put to ${subjects[rule.subjects]}; family ${rule.family}; highest level ${rule.highest}; measure ${measure.id}.`);
	if (rule.needs.length > 0) put(`Needs ${rule.needs.join(", ")}.`);
	part("Limits", limitLines(rule));
	part("Held down", rule.ceilings.map(({ when, level, why }) => {
		const words = measure.circumstances[when];
		return `to ${level} when ${when}${words === void 0 ? "" : ` (${words})`}: ${why}`;
	}));
	part("Numbers of the measure (options)", Object.entries(rule.options).map(([name, value]) => `${name} = ${said(value)}: ${measure.options[name]?.what ?? "not known"}`));
	part("What it says", Object.entries(rule.claims).map(([side, claim]) => `${side}: ${claim}`));
	part("It may be innocent", rule.innocent);
	part("It would be settled by", rule.settles);
	part("Where the limits come from", [sourceLine(rule.source)]);
	part("Examples, judged whenever the rule is loaded", rule.examples.map(exampleLine));
	return `${lines.join("\n")}\n`;
}
function limitLines(rule) {
	return raisedLevels.flatMap((level) => {
		const limit = rule.limits[level];
		if (limit === void 0) return [];
		return [`${level}: ${["at least", "at most"].filter((bound) => limit[bound] !== void 0).map((bound) => `${bound} ${limit[bound]}${spreads[limit.of]}`).join(" or ")}, ${ends[limit.end]}`];
	});
}
function said(value) {
	return typeof value === "number" ? String(value) : `[${value.join(", ")}]`;
}
function sourceLine(source) {
	switch (source.kind) {
		case "published": return `published: ${source.citation}`;
		case "measured": {
			const { query, refer } = source.falseAlarm;
			return `measured: of honest submissions a share of ${query} reaches query and ${refer} refer (${source.command}). ${source.note}`;
		}
		default: return `${source.kind}: ${source.note}`;
	}
}
function exampleLine({ value, interval, count, circumstances = [], level }) {
	const when = circumstances.length === 0 ? "" : `, ${circumstances.join(", ")}`;
	return `${value} [${interval.join(", ")}] from ${count}${when}: ${level}`;
}
// src/cli/rules.ts
const listExamples = `
Examples:
  $ wattassay rules
  $ wattassay rules show late-drift
  $ wattassay rules check our-rules/
  $ wattassay rules --rules our-rules/
`;
const showExamples = `
Examples:
  $ wattassay rules show late-drift
  $ wattassay rules show late-drift --rules our-rules/
`;
const checkExamples = `
Examples:
  $ wattassay rules check our-rules/

A file in the folder bears the name of the rule that it changes and says only what differs:
  our-rules/late-drift.rule.json   { "id": "late-drift", "off": "No rider can spin down at this venue." }

Exit status: 0 the folder can be used; 2 it cannot, and every reason is told.
`;
/** `wattassay rules`, `rules show ID`, `rules check FOLDER`. `done` is told the exit status. */
function rulesCommand(io, done) {
	const list = new Command("rules").summary("list the rules, show one, or check a folder of your own").description("Lists the rules by the kind of evidence they argue from.").argument("[command]").usage("[options] | show <id> | check <folder>").addOption(options$36.rules()).addHelpText("after", listExamples).action(async (word, given) => {
		if (word !== void 0) throw unknownWord(word);
		const { set } = await rulesGiven(io, given.rules);
		io.stdout.write(listing(set, io));
		done(status.done);
	});
	list.addCommand(new Command("show").description("Shows a rule: its question, limits, numbers, words, source and examples.").argument("<id>", "the id of the rule").addOption(options$36.rules()).addHelpText("after", showExamples).action(async (id, _, command) => {
		const { set } = await rulesGiven(io, command.optsWithGlobals().rules);
		io.stdout.write(shown(set, id, io));
		done(status.done);
	}));
	list.addCommand(new Command("check").description("Checks a folder of an event's own rules and says what it changes.").argument("<folder>", "the folder").addHelpText("after", checkExamples).action(async (folder) => {
		const { set } = await rulesGiven(io, folder);
		io.stdout.write(changes(set));
		done(status.done);
	}));
	return list;
}
function unknownWord(word) {
	const isRule = shipped.rules.some(({ id }) => id === word);
	const near = nearest(word, ["show", "check"]);
	const hint = isRule ? `wattassay rules show ${word}` : near === null ? null : `wattassay rules ${near}`;
	return new Problem({
		code: "usage",
		what: `there is no command “rules ${word}”`,
		hint: hint === null ? "See wattassay rules --help" : `Did you mean: ${hint}`
	});
}
function listing({ rules }, { stdout, env }) {
	const paint = painter(stdout, env);
	const room = Math.max(...rules.map(({ id }) => id.length));
	const families = [...new Set(rules.map(({ family }) => family))];
	const line = ({ id, highest, question, off }) => {
		const words = off === void 0 ? question : `switched off: ${off}`;
		return `  ${id.padEnd(room)}  ${highest.padEnd(10)}  ${clean(words)}\n`;
	};
	return families.map((family) => {
		const lines = rules.filter((rule) => rule.family === family).map(line);
		return `${paint("underline", family)}\n${lines.join("")}`;
	}).join("\n");
}
function shown({ rules }, id, { stdout, env }) {
	const rule = rules.find((candidate) => candidate.id === id);
	const measure = shipped.measures.find((candidate) => candidate.id === rule?.measure);
	if (rule === void 0 || measure === void 0) {
		const near = nearest(id, rules.map((candidate) => candidate.id));
		throw new Problem({
			code: "usage",
			what: `there is no rule “${id}”`,
			hint: near === null ? "wattassay rules lists them" : `Did you mean “${near}”?`
		});
	}
	return showRule(rule, measure, Math.min(100, widthOf(stdout)), painter(stdout, env));
}
/** What an event's folder does to the shipped rules, field by field. */
function changes({ rules, grades, overlaid, sha256 }) {
	const lines = rules.flatMap((rule) => {
		const before = shipped.rules.find(({ id }) => id === rule.id);
		if (before === void 0) return [`${rule.id}: a new rule`];
		if (rule.off !== void 0) return [`${rule.id}: switched off: ${rule.off}`];
		return fields(rule.id, before, rule);
	});
	lines.push(...fields("grades", shipped.grades, grades));
	const files = `${overlaid.length} ${overlaid.length === 1 ? "file" : "files"}`;
	return `${(lines.length === 0 ? ["nothing differs from the shipped rules"] : lines).map((line) => clean(line)).join("\n")}\n${files} in order; rule set ${sha256}\n`;
}
function fields(name, before, after) {
	const json = (value) => value === void 0 ? "none" : JSON.stringify(value);
	return differences(before, after).map(({ path, before, after }) => `${name} › ${path.join(" › ")}: ${json(before)} → ${json(after)}`);
}
// src/cli.ts
/** Runs a command line and returns its exit status. Nothing outside `io` is touched but files. */
async function main(argv, io) {
	let result = status.done;
	const program = commands(io, (reached) => {
		result = reached;
	});
	try {
		await program.parseAsync([...argv], { from: "user" });
		return result;
	} catch (error) {
		return failed(error, io);
	}
}
/** The whole command line, ready to be parsed or described. */
function commands(io, done) {
	const program = new Command(tool.name).description("Audits cycling power recordings: what agrees, what does not, and what would settle it.").version(tool.version, "--version", "print the version").helpOption("--help", "explain a command").helpCommand("help [command]", "explain a command").addHelpText("after", "\nStart with:\n  $ wattassay audit trainer.fit --second pedals.fit --out report.html\n");
	const subcommands = [
		auditCommand(io, done),
		profileCommand(io, done),
		rulesCommand(io, done)
	];
	for (const command of subcommands) program.addCommand(command);
	for (const command of everyCommand(program)) dress(command, io);
	return program;
}
function everyCommand(command) {
	return [command, ...command.commands.flatMap(everyCommand)];
}
/** Settings that every command shares: where it writes, in which style, and that it never exits itself. */
function dress(command, io) {
	const paint = painter(io.stdout, io.env);
	command.exitOverride().helpOption("--help", "explain this command").showHelpAfterError("(--help explains the command)").configureOutput({
		writeOut: (text) => io.stdout.write(text),
		writeErr: (text) => io.stderr.write(cleanLines(text)),
		getOutHelpWidth: () => helpWidth(io.stdout),
		getErrHelpWidth: () => helpWidth(io.stderr),
		getOutHasColors: () => coloured(io.stdout, io.env),
		getErrHasColors: () => coloured(io.stderr, io.env)
	}).configureHelp({
		styleTitle: (title) => paint("underline", title),
		sortOptions: false
	});
}
function helpWidth(stream) {
	return Math.min(100, widthOf(stream));
}
/** A message may quote what a stranger called a file. */
function cleanLines(text) {
	return text.split("\n").map(clean).join("\n");
}
function failed(error, io) {
	if (error instanceof CommanderError) return error.exitCode === 0 ? status.done : status.couldNotRun;
	const all = error instanceof AggregateError ? error.errors : [error];
	const problems = all.filter((one) => one instanceof Problem);
	if (problems.length === all.length) {
		complain(io, problems);
		return status.couldNotRun;
	}
	remark(io, "This is a fault of the program, not of your files. Please report it with these lines:");
	io.stderr.write(`${cleanLines(error instanceof Error ? error.stack ?? error.message : String(error))}\n`);
	return status.couldNotRun;
}
// src/read/columns.ts
/**
* What every format does at its end: records without a time are left out (and counted), channels without
* a single value are absent, further meters are told from copies of the power channel.
*/
function assemble(raw) {
	const defects = [];
	const kept = timedRecords(raw.time);
	if (kept !== null) defects.push({
		id: "unreadable-values",
		values: {
			count: raw.time.length - kept.length,
			column: "time"
		}
	});
	const select = (column) => kept === null ? column : Float64Array.from(kept, (i) => column[i]);
	const filled = {};
	for (const channel of channels) {
		const column = raw.channels[channel];
		if (column === void 0) continue;
		const selected = select(channel === "heartRate" ? withoutZeros(column) : column);
		if (hasValue(selected)) filled[channel] = selected;
	}
	const meters = sortMeters(filled.power, raw.meters.map(({ name, power }) => ({
		name,
		power: select(power)
	})));
	if (meters.standIn !== null) {
		filled.power = meters.standIn.power;
		defects.push({
			id: "power-in-developer-field",
			values: { name: meters.standIn.name }
		});
	}
	return {
		time: select(raw.time),
		channels: filled,
		extraMeters: meters.extra,
		defects
	};
}
/** Indices of the records that have a time; null when all have. */
function timedRecords(time) {
	if (time.every(Number.isFinite)) return null;
	const kept = new Uint32Array(time.length);
	let count = 0;
	for (let i = 0; i < time.length; i++) if (Number.isFinite(time[i])) kept[count++] = i;
	return kept.subarray(0, count);
}
/** Recorders write 0 bpm while they hear no strap: nobody rides at that heart rate, so it is missing. */
function withoutZeros(column) {
	return column.map((value) => value === 0 ? NaN : value);
}
function hasValue(column) {
	return column.some((value) => !Number.isNaN(value));
}
// src/read/number.ts
const plain = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d{1,3})?$/;
/** A decimal number with a point; NaN for anything else, infinity included. */
function decimal(text) {
	const value = plain.test(text) ? Number(text) : NaN;
	return Number.isFinite(value) ? value : NaN;
}
/** What a decoder hands over where a number should be: NaN for anything but a finite one. */
function finite(value) {
	return typeof value === "number" && Number.isFinite(value) ? value : NaN;
}
// src/read/clock.ts
const stamp = /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d(?:[.,]\d{1,9})?))?\s?(?:(Z|UTC|GMT)|([-+])(\d\d):?(\d\d)?)?$/i;
/** An ISO 8601 date and time (also with a space in place of the T); null for anything else. */
function parseClock(text) {
	const match = stamp.exec(text);
	if (match === null) return null;
	const [, year, month, day, hour, minute, second = "0", utc, sign, zoneHour, zoneMinute = "0"] = match;
	const date = dateSeconds(Number(year), Number(month), Number(day));
	const time = timeSeconds(Number(hour), Number(minute), Number(second.replace(",", ".")));
	if (Number.isNaN(date + time)) return null;
	const zone = sign === void 0 ? 0 : (Number(zoneHour) * 60 + Number(zoneMinute)) * 60;
	return {
		seconds: date + time - (sign === "-" ? -zone : zone),
		zoned: utc !== void 0 || sign !== void 0
	};
}
/** Midnight UTC of a calendar day, s; NaN when there is no such day. */
function dateSeconds(year, month, day) {
	const at = new Date(Date.UTC(year, month - 1, day));
	return at.getUTCMonth() === month - 1 && at.getUTCDate() === day ? at.getTime() / 1e3 : NaN;
}
/** Seconds since midnight; NaN when a part is out of range. A leap second counts as the next minute. */
function timeSeconds(hour, minute, second) {
	return hour < 24 && minute < 60 && second < 61 ? hour * 3600 + minute * 60 + second : NaN;
}
// src/read/sport.ts
/**
* What a file's own words say of sport and place. Recorders use the words of their format ("Biking",
* "indoor_cycling", "virtual_activity") and their own ("Indoor Ride").
*/
const sports = [
	["cycling", /cycl|bik|\bride|virtual_?ride|spin/],
	["running", /run|treadmill/],
	["walking", /walk|hik/],
	["swimming", /swim/],
	["rowing", /row/]
];
const inside = /indoor|virtual|treadmill|spin|trainer|elliptical|stair|lap_swim/;
const outside = /outdoor|road|street|trail|mountain|gravel|downhill|cyclocross|open_water|commut/;
/** "cycling", "running" …; the word itself (lower case) when it is another; null when nothing is said. */
function sportOf(words) {
	const said = words?.trim().toLowerCase() ?? "";
	if (said === "" || said === "other" || said === "generic") return null;
	return sports.find(([, pattern]) => pattern.test(said))?.[0] ?? said;
}
/**
* Indoors as stated; else outdoors when there are positions; else unknown. A statement outweighs positions,
* for virtual rides carry positions of places that the rider never left home for.
*/
function indoorsOf(words, hasPositions) {
	const said = words?.toLowerCase() ?? "";
	if (inside.test(said)) return true;
	return outside.test(said) || hasPositions ? false : null;
}
// src/read/totals.ts
const added = [
	"workJ",
	"timerS",
	"distanceM"
];
const highest = ["maxPower", "maxHeartRate"];
const averaged = [
	"meanPower",
	"meanCadence",
	"meanHeartRate"
];
const neverZero = /* @__PURE__ */ new Set(["meanHeartRate", "maxHeartRate"]);
/**
* The totals that are numbers; the others are not stated. A heart rate of 0 is how recorders write that they
* heard no strap.
*/
function stated(values) {
	return Object.fromEntries(Object.entries(values).filter(([key, value]) => Number.isFinite(value) && (value > 0 || !neverZero.has(key))));
}
/**
* Totals of several sessions or laps as one: sums, maxima, and means weighted by timer time. A total that
* one of them does not state is not stated for the whole.
*/
function combineTotals(parts) {
	if (parts.length === 1) return parts[0];
	const all = (key) => parts.map((part) => part[key] ?? NaN);
	const sum = (values) => values.reduce((total, value) => total + value, 0);
	const weights = all("timerS");
	const combined = {};
	if (parts.length === 0) return combined;
	for (const key of added) combined[key] = sum(all(key));
	for (const key of highest) combined[key] = Math.max(...all(key));
	for (const key of averaged) combined[key] = sum(all(key).map((mean, i) => mean * weights[i])) / sum(weights);
	return stated(combined);
}
// node_modules/xmlchars/xml/1.0/ed5.js
var require_ed5 = /* @__PURE__ */ __commonJSMin(((exports) => {
	/**
	* Character classes and associated utilities for the 5th edition of XML 1.0.
	*
	* @author Louis-Dominique Dubeau
	* @license MIT
	* @copyright Louis-Dominique Dubeau
	*/
	Object.defineProperty(exports, "__esModule", { value: true });
	exports.CHAR = "	\n\r -퟿-�𐀀-􏿿";
	exports.S = " 	\r\n";
	exports.NAME_START_CHAR = ":A-Z_a-zÀ-ÖØ-öø-˿Ͱ-ͽͿ-῿‌‍⁰-↏Ⰰ-⿯、-퟿豈-﷏ﷰ-�𐀀-󯿿";
	exports.NAME_CHAR = "-" + exports.NAME_START_CHAR + ".0-9·̀-ͯ‿-⁀";
	exports.CHAR_RE = new RegExp("^[" + exports.CHAR + "]$", "u");
	exports.S_RE = new RegExp("^[" + exports.S + "]+$", "u");
	exports.NAME_START_CHAR_RE = new RegExp("^[" + exports.NAME_START_CHAR + "]$", "u");
	exports.NAME_CHAR_RE = new RegExp("^[" + exports.NAME_CHAR + "]$", "u");
	exports.NAME_RE = new RegExp("^[" + exports.NAME_START_CHAR + "][" + exports.NAME_CHAR + "]*$", "u");
	exports.NMTOKEN_RE = new RegExp("^[" + exports.NAME_CHAR + "]+$", "u");
	var TAB = 9;
	var NL = 10;
	var CR = 13;
	var SPACE = 32;
	/** All characters in the ``S`` production. */
	exports.S_LIST = [
		SPACE,
		NL,
		CR,
		TAB
	];
	/**
	* Determines whether a codepoint matches the ``CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``CHAR``.
	*/
	function isChar(c) {
		return c >= SPACE && c <= 55295 || c === NL || c === CR || c === TAB || c >= 57344 && c <= 65533 || c >= 65536 && c <= 1114111;
	}
	exports.isChar = isChar;
	/**
	* Determines whether a codepoint matches the ``S`` (space) production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``S``.
	*/
	function isS(c) {
		return c === SPACE || c === NL || c === CR || c === TAB;
	}
	exports.isS = isS;
	/**
	* Determines whether a codepoint matches the ``NAME_START_CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``NAME_START_CHAR``.
	*/
	function isNameStartChar(c) {
		return c >= 65 && c <= 90 || c >= 97 && c <= 122 || c === 58 || c === 95 || c === 8204 || c === 8205 || c >= 192 && c <= 214 || c >= 216 && c <= 246 || c >= 248 && c <= 767 || c >= 880 && c <= 893 || c >= 895 && c <= 8191 || c >= 8304 && c <= 8591 || c >= 11264 && c <= 12271 || c >= 12289 && c <= 55295 || c >= 63744 && c <= 64975 || c >= 65008 && c <= 65533 || c >= 65536 && c <= 983039;
	}
	exports.isNameStartChar = isNameStartChar;
	/**
	* Determines whether a codepoint matches the ``NAME_CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``NAME_CHAR``.
	*/
	function isNameChar(c) {
		return isNameStartChar(c) || c >= 48 && c <= 57 || c === 45 || c === 46 || c === 183 || c >= 768 && c <= 879 || c >= 8255 && c <= 8256;
	}
	exports.isNameChar = isNameChar;
}));
// node_modules/xmlchars/xml/1.1/ed2.js
var require_ed2 = /* @__PURE__ */ __commonJSMin(((exports) => {
	/**
	* Character classes and associated utilities for the 2nd edition of XML 1.1.
	*
	* @author Louis-Dominique Dubeau
	* @license MIT
	* @copyright Louis-Dominique Dubeau
	*/
	Object.defineProperty(exports, "__esModule", { value: true });
	exports.CHAR = "-퟿-�𐀀-􏿿";
	exports.RESTRICTED_CHAR = "-\b\v\f---";
	exports.S = " 	\r\n";
	exports.NAME_START_CHAR = ":A-Z_a-zÀ-ÖØ-öø-˿Ͱ-ͽͿ-῿‌‍⁰-↏Ⰰ-⿯、-퟿豈-﷏ﷰ-�𐀀-󯿿";
	exports.NAME_CHAR = "-" + exports.NAME_START_CHAR + ".0-9·̀-ͯ‿-⁀";
	exports.CHAR_RE = new RegExp("^[" + exports.CHAR + "]$", "u");
	exports.RESTRICTED_CHAR_RE = new RegExp("^[" + exports.RESTRICTED_CHAR + "]$", "u");
	exports.S_RE = new RegExp("^[" + exports.S + "]+$", "u");
	exports.NAME_START_CHAR_RE = new RegExp("^[" + exports.NAME_START_CHAR + "]$", "u");
	exports.NAME_CHAR_RE = new RegExp("^[" + exports.NAME_CHAR + "]$", "u");
	exports.NAME_RE = new RegExp("^[" + exports.NAME_START_CHAR + "][" + exports.NAME_CHAR + "]*$", "u");
	exports.NMTOKEN_RE = new RegExp("^[" + exports.NAME_CHAR + "]+$", "u");
	var TAB = 9;
	var NL = 10;
	var CR = 13;
	var SPACE = 32;
	/** All characters in the ``S`` production. */
	exports.S_LIST = [
		SPACE,
		NL,
		CR,
		TAB
	];
	/**
	* Determines whether a codepoint matches the ``CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``CHAR``.
	*/
	function isChar(c) {
		return c >= 1 && c <= 55295 || c >= 57344 && c <= 65533 || c >= 65536 && c <= 1114111;
	}
	exports.isChar = isChar;
	/**
	* Determines whether a codepoint matches the ``RESTRICTED_CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``RESTRICTED_CHAR``.
	*/
	function isRestrictedChar(c) {
		return c >= 1 && c <= 8 || c === 11 || c === 12 || c >= 14 && c <= 31 || c >= 127 && c <= 132 || c >= 134 && c <= 159;
	}
	exports.isRestrictedChar = isRestrictedChar;
	/**
	* Determines whether a codepoint matches the ``CHAR`` production and does not
	* match the ``RESTRICTED_CHAR`` production. ``isCharAndNotRestricted(x)`` is
	* equivalent to ``isChar(x) && !isRestrictedChar(x)``. This function is faster
	* than running the two-call equivalent.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``CHAR`` and does not match
	* ``RESTRICTED_CHAR``.
	*/
	function isCharAndNotRestricted(c) {
		return c === 9 || c === 10 || c === 13 || c > 31 && c < 127 || c === 133 || c > 159 && c <= 55295 || c >= 57344 && c <= 65533 || c >= 65536 && c <= 1114111;
	}
	exports.isCharAndNotRestricted = isCharAndNotRestricted;
	/**
	* Determines whether a codepoint matches the ``S`` (space) production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``S``.
	*/
	function isS(c) {
		return c === SPACE || c === NL || c === CR || c === TAB;
	}
	exports.isS = isS;
	/**
	* Determines whether a codepoint matches the ``NAME_START_CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``NAME_START_CHAR``.
	*/
	function isNameStartChar(c) {
		return c >= 65 && c <= 90 || c >= 97 && c <= 122 || c === 58 || c === 95 || c === 8204 || c === 8205 || c >= 192 && c <= 214 || c >= 216 && c <= 246 || c >= 248 && c <= 767 || c >= 880 && c <= 893 || c >= 895 && c <= 8191 || c >= 8304 && c <= 8591 || c >= 11264 && c <= 12271 || c >= 12289 && c <= 55295 || c >= 63744 && c <= 64975 || c >= 65008 && c <= 65533 || c >= 65536 && c <= 983039;
	}
	exports.isNameStartChar = isNameStartChar;
	/**
	* Determines whether a codepoint matches the ``NAME_CHAR`` production.
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches ``NAME_CHAR``.
	*/
	function isNameChar(c) {
		return isNameStartChar(c) || c >= 48 && c <= 57 || c === 45 || c === 46 || c === 183 || c >= 768 && c <= 879 || c >= 8255 && c <= 8256;
	}
	exports.isNameChar = isNameChar;
}));
// node_modules/xmlchars/xmlns/1.0/ed3.js
var require_ed3 = /* @__PURE__ */ __commonJSMin(((exports) => {
	/**
	* Character class utilities for XML NS 1.0 edition 3.
	*
	* @author Louis-Dominique Dubeau
	* @license MIT
	* @copyright Louis-Dominique Dubeau
	*/
	Object.defineProperty(exports, "__esModule", { value: true });
	exports.NC_NAME_START_CHAR = "A-Z_a-zÀ-ÖØ-öø-˿Ͱ-ͽͿ-῿‌-‍⁰-↏Ⰰ-⿯、-퟿豈-﷏ﷰ-�𐀀-󯿿";
	exports.NC_NAME_CHAR = "-" + exports.NC_NAME_START_CHAR + ".0-9·̀-ͯ‿-⁀";
	exports.NC_NAME_START_CHAR_RE = new RegExp("^[" + exports.NC_NAME_START_CHAR + "]$", "u");
	exports.NC_NAME_CHAR_RE = new RegExp("^[" + exports.NC_NAME_CHAR + "]$", "u");
	exports.NC_NAME_RE = new RegExp("^[" + exports.NC_NAME_START_CHAR + "][" + exports.NC_NAME_CHAR + "]*$", "u");
	/**
	* Determines whether a codepoint matches [[NC_NAME_START_CHAR]].
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches.
	*/
	function isNCNameStartChar(c) {
		return c >= 65 && c <= 90 || c === 95 || c >= 97 && c <= 122 || c >= 192 && c <= 214 || c >= 216 && c <= 246 || c >= 248 && c <= 767 || c >= 880 && c <= 893 || c >= 895 && c <= 8191 || c >= 8204 && c <= 8205 || c >= 8304 && c <= 8591 || c >= 11264 && c <= 12271 || c >= 12289 && c <= 55295 || c >= 63744 && c <= 64975 || c >= 65008 && c <= 65533 || c >= 65536 && c <= 983039;
	}
	exports.isNCNameStartChar = isNCNameStartChar;
	/**
	* Determines whether a codepoint matches [[NC_NAME_CHAR]].
	*
	* @param c The code point.
	*
	* @returns ``true`` if the codepoint matches.
	*/
	function isNCNameChar(c) {
		return isNCNameStartChar(c) || c === 45 || c === 46 || c >= 48 && c <= 57 || c === 183 || c >= 768 && c <= 879 || c >= 8255 && c <= 8256;
	}
	exports.isNCNameChar = isNCNameChar;
}));
// src/read/xml/markup.ts
var import_saxes = (/* @__PURE__ */ __commonJSMin(((exports) => {
	Object.defineProperty(exports, "__esModule", { value: true });
	exports.SaxesParser = exports.EVENTS = void 0;
	const ed5 = require_ed5();
	const ed2 = require_ed2();
	const NSed3 = require_ed3();
	var isS = ed5.isS;
	var isChar10 = ed5.isChar;
	var isNameStartChar = ed5.isNameStartChar;
	var isNameChar = ed5.isNameChar;
	var S_LIST = ed5.S_LIST;
	var NAME_RE = ed5.NAME_RE;
	var isChar11 = ed2.isChar;
	var isNCNameStartChar = NSed3.isNCNameStartChar;
	var isNCNameChar = NSed3.isNCNameChar;
	var NC_NAME_RE = NSed3.NC_NAME_RE;
	const XML_NAMESPACE = "http://www.w3.org/XML/1998/namespace";
	const XMLNS_NAMESPACE = "http://www.w3.org/2000/xmlns/";
	const rootNS = {
		__proto__: null,
		xml: XML_NAMESPACE,
		xmlns: XMLNS_NAMESPACE
	};
	const XML_ENTITIES = {
		__proto__: null,
		amp: "&",
		gt: ">",
		lt: "<",
		quot: "\"",
		apos: "'"
	};
	const EOC = -1;
	const NL_LIKE = -2;
	const S_BEGIN = 0;
	const S_BEGIN_WHITESPACE = 1;
	const S_DOCTYPE = 2;
	const S_DOCTYPE_QUOTE = 3;
	const S_DTD = 4;
	const S_DTD_QUOTED = 5;
	const S_DTD_OPEN_WAKA = 6;
	const S_DTD_OPEN_WAKA_BANG = 7;
	const S_DTD_COMMENT = 8;
	const S_DTD_COMMENT_ENDING = 9;
	const S_DTD_COMMENT_ENDED = 10;
	const S_DTD_PI = 11;
	const S_DTD_PI_ENDING = 12;
	const S_TEXT = 13;
	const S_ENTITY = 14;
	const S_OPEN_WAKA = 15;
	const S_OPEN_WAKA_BANG = 16;
	const S_COMMENT = 17;
	const S_COMMENT_ENDING = 18;
	const S_COMMENT_ENDED = 19;
	const S_CDATA = 20;
	const S_CDATA_ENDING = 21;
	const S_CDATA_ENDING_2 = 22;
	const S_PI_FIRST_CHAR = 23;
	const S_PI_REST = 24;
	const S_PI_BODY = 25;
	const S_PI_ENDING = 26;
	const S_XML_DECL_NAME_START = 27;
	const S_XML_DECL_NAME = 28;
	const S_XML_DECL_EQ = 29;
	const S_XML_DECL_VALUE_START = 30;
	const S_XML_DECL_VALUE = 31;
	const S_XML_DECL_SEPARATOR = 32;
	const S_XML_DECL_ENDING = 33;
	const S_OPEN_TAG = 34;
	const S_OPEN_TAG_SLASH = 35;
	const S_ATTRIB = 36;
	const S_ATTRIB_NAME = 37;
	const S_ATTRIB_NAME_SAW_WHITE = 38;
	const S_ATTRIB_VALUE = 39;
	const S_ATTRIB_VALUE_QUOTED = 40;
	const S_ATTRIB_VALUE_CLOSED = 41;
	const S_ATTRIB_VALUE_UNQUOTED = 42;
	const S_CLOSE_TAG = 43;
	const S_CLOSE_TAG_SAW_WHITE = 44;
	const TAB = 9;
	const NL = 10;
	const CR = 13;
	const SPACE = 32;
	const BANG = 33;
	const DQUOTE = 34;
	const AMP = 38;
	const SQUOTE = 39;
	const MINUS = 45;
	const FORWARD_SLASH = 47;
	const SEMICOLON = 59;
	const LESS = 60;
	const EQUAL = 61;
	const GREATER = 62;
	const QUESTION = 63;
	const OPEN_BRACKET = 91;
	const CLOSE_BRACKET = 93;
	const NEL = 133;
	const LS = 8232;
	const isQuote = (c) => c === DQUOTE || c === SQUOTE;
	const QUOTES = [DQUOTE, SQUOTE];
	const DOCTYPE_TERMINATOR = [
		...QUOTES,
		OPEN_BRACKET,
		GREATER
	];
	const DTD_TERMINATOR = [
		...QUOTES,
		LESS,
		CLOSE_BRACKET
	];
	const XML_DECL_NAME_TERMINATOR = [
		EQUAL,
		QUESTION,
		...S_LIST
	];
	const ATTRIB_VALUE_UNQUOTED_TERMINATOR = [
		...S_LIST,
		GREATER,
		AMP,
		LESS
	];
	function nsPairCheck(parser, prefix, uri) {
		switch (prefix) {
			case "xml":
				if (uri !== XML_NAMESPACE) parser.fail(`xml prefix must be bound to ${XML_NAMESPACE}.`);
				break;
			case "xmlns": if (uri !== XMLNS_NAMESPACE) parser.fail(`xmlns prefix must be bound to ${XMLNS_NAMESPACE}.`);
		}
		switch (uri) {
			case XMLNS_NAMESPACE:
				parser.fail(prefix === "" ? `the default namespace may not be set to ${uri}.` : `may not assign a prefix (even "xmlns") to the URI \
${XMLNS_NAMESPACE}.`);
				break;
			case XML_NAMESPACE: switch (prefix) {
				case "xml": break;
				case "":
					parser.fail(`the default namespace may not be set to ${uri}.`);
					break;
				default: parser.fail("may not assign the xml namespace to another prefix.");
			}
		}
	}
	function nsMappingCheck(parser, mapping) {
		for (const local of Object.keys(mapping)) nsPairCheck(parser, local, mapping[local]);
	}
	const isNCName = (name) => NC_NAME_RE.test(name);
	const isName = (name) => NAME_RE.test(name);
	const FORBIDDEN_START = 0;
	const FORBIDDEN_BRACKET = 1;
	const FORBIDDEN_BRACKET_BRACKET = 2;
	/**
	* The list of supported events.
	*/
	exports.EVENTS = [
		"xmldecl",
		"text",
		"processinginstruction",
		"doctype",
		"comment",
		"opentagstart",
		"attribute",
		"opentag",
		"closetag",
		"cdata",
		"error",
		"end",
		"ready"
	];
	const EVENT_NAME_TO_HANDLER_NAME = {
		xmldecl: "xmldeclHandler",
		text: "textHandler",
		processinginstruction: "piHandler",
		doctype: "doctypeHandler",
		comment: "commentHandler",
		opentagstart: "openTagStartHandler",
		attribute: "attributeHandler",
		opentag: "openTagHandler",
		closetag: "closeTagHandler",
		cdata: "cdataHandler",
		error: "errorHandler",
		end: "endHandler",
		ready: "readyHandler"
	};
	var SaxesParser = class {
		/**
		* @param opt The parser options.
		*/
		constructor(opt) {
			this.opt = opt !== null && opt !== void 0 ? opt : {};
			this.fragmentOpt = !!this.opt.fragment;
			const xmlnsOpt = this.xmlnsOpt = !!this.opt.xmlns;
			this.trackPosition = this.opt.position !== false;
			this.fileName = this.opt.fileName;
			if (xmlnsOpt) {
				this.nameStartCheck = isNCNameStartChar;
				this.nameCheck = isNCNameChar;
				this.isName = isNCName;
				this.processAttribs = this.processAttribsNS;
				this.pushAttrib = this.pushAttribNS;
				this.ns = Object.assign({ __proto__: null }, rootNS);
				const additional = this.opt.additionalNamespaces;
				if (additional != null) {
					nsMappingCheck(this, additional);
					Object.assign(this.ns, additional);
				}
			} else {
				this.nameStartCheck = isNameStartChar;
				this.nameCheck = isNameChar;
				this.isName = isName;
				this.processAttribs = this.processAttribsPlain;
				this.pushAttrib = this.pushAttribPlain;
			}
			this.stateTable = [
				this.sBegin,
				this.sBeginWhitespace,
				this.sDoctype,
				this.sDoctypeQuote,
				this.sDTD,
				this.sDTDQuoted,
				this.sDTDOpenWaka,
				this.sDTDOpenWakaBang,
				this.sDTDComment,
				this.sDTDCommentEnding,
				this.sDTDCommentEnded,
				this.sDTDPI,
				this.sDTDPIEnding,
				this.sText,
				this.sEntity,
				this.sOpenWaka,
				this.sOpenWakaBang,
				this.sComment,
				this.sCommentEnding,
				this.sCommentEnded,
				this.sCData,
				this.sCDataEnding,
				this.sCDataEnding2,
				this.sPIFirstChar,
				this.sPIRest,
				this.sPIBody,
				this.sPIEnding,
				this.sXMLDeclNameStart,
				this.sXMLDeclName,
				this.sXMLDeclEq,
				this.sXMLDeclValueStart,
				this.sXMLDeclValue,
				this.sXMLDeclSeparator,
				this.sXMLDeclEnding,
				this.sOpenTag,
				this.sOpenTagSlash,
				this.sAttrib,
				this.sAttribName,
				this.sAttribNameSawWhite,
				this.sAttribValue,
				this.sAttribValueQuoted,
				this.sAttribValueClosed,
				this.sAttribValueUnquoted,
				this.sCloseTag,
				this.sCloseTagSawWhite
			];
			this._init();
		}
		/**
		* Indicates whether or not the parser is closed. If ``true``, wait for
		* the ``ready`` event to write again.
		*/
		get closed() {
			return this._closed;
		}
		_init() {
			var _a;
			this.openWakaBang = "";
			this.text = "";
			this.name = "";
			this.piTarget = "";
			this.entity = "";
			this.q = null;
			this.tags = [];
			this.tag = null;
			this.topNS = null;
			this.chunk = "";
			this.chunkPosition = 0;
			this.i = 0;
			this.prevI = 0;
			this.carriedFromPrevious = void 0;
			this.forbiddenState = FORBIDDEN_START;
			this.attribList = [];
			const { fragmentOpt } = this;
			this.state = fragmentOpt ? S_TEXT : S_BEGIN;
			this.reportedTextBeforeRoot = this.reportedTextAfterRoot = this.closedRoot = this.sawRoot = fragmentOpt;
			this.xmlDeclPossible = !fragmentOpt;
			this.xmlDeclExpects = ["version"];
			this.entityReturnState = void 0;
			let { defaultXMLVersion } = this.opt;
			if (defaultXMLVersion === void 0) {
				if (this.opt.forceXMLVersion === true) throw new Error("forceXMLVersion set but defaultXMLVersion is not set");
				defaultXMLVersion = "1.0";
			}
			this.setXMLVersion(defaultXMLVersion);
			this.positionAtNewLine = 0;
			this.doctype = false;
			this._closed = false;
			this.xmlDecl = {
				version: void 0,
				encoding: void 0,
				standalone: void 0
			};
			this.line = 1;
			this.column = 0;
			this.ENTITIES = Object.create(XML_ENTITIES);
			(_a = this.readyHandler) === null || _a === void 0 || _a.call(this);
		}
		/**
		* The stream position the parser is currently looking at. This field is
		* zero-based.
		*
		* This field is not based on counting Unicode characters but is to be
		* interpreted as a plain index into a JavaScript string.
		*/
		get position() {
			return this.chunkPosition + this.i;
		}
		/**
		* The column number of the next character to be read by the parser.  *
		* This field is zero-based. (The first column in a line is 0.)
		*
		* This field reports the index at which the next character would be in the
		* line if the line were represented as a JavaScript string.  Note that this
		* *can* be different to a count based on the number of *Unicode characters*
		* due to how JavaScript handles astral plane characters.
		*
		* See [[column]] for a number that corresponds to a count of Unicode
		* characters.
		*/
		get columnIndex() {
			return this.position - this.positionAtNewLine;
		}
		/**
		* Set an event listener on an event. The parser supports one handler per
		* event type. If you try to set an event handler over an existing handler,
		* the old handler is silently overwritten.
		*
		* @param name The event to listen to.
		*
		* @param handler The handler to set.
		*/
		on(name, handler) {
			this[EVENT_NAME_TO_HANDLER_NAME[name]] = handler;
		}
		/**
		* Unset an event handler.
		*
		* @parma name The event to stop listening to.
		*/
		off(name) {
			this[EVENT_NAME_TO_HANDLER_NAME[name]] = void 0;
		}
		/**
		* Make an error object. The error object will have a message that contains
		* the ``fileName`` option passed at the creation of the parser. If position
		* tracking was turned on, it will also have line and column number
		* information.
		*
		* @param message The message describing the error to report.
		*
		* @returns An error object with a properly formatted message.
		*/
		makeError(message) {
			var _a;
			let msg = (_a = this.fileName) !== null && _a !== void 0 ? _a : "";
			if (this.trackPosition) {
				if (msg.length > 0) msg += ":";
				msg += `${this.line}:${this.column}`;
			}
			if (msg.length > 0) msg += ": ";
			return new Error(msg + message);
		}
		/**
		* Report a parsing error. This method is made public so that client code may
		* check for issues that are outside the scope of this project and can report
		* errors.
		*
		* @param message The error to report.
		*
		* @returns this
		*/
		fail(message) {
			const err = this.makeError(message);
			const handler = this.errorHandler;
			if (handler === void 0) throw err;
			else handler(err);
			return this;
		}
		/**
		* Write a XML data to the parser.
		*
		* @param chunk The XML data to write.
		*
		* @returns this
		*/
		write(chunk) {
			if (this.closed) return this.fail("cannot write after close; assign an onready handler.");
			let end = false;
			if (chunk === null) {
				end = true;
				chunk = "";
			} else if (typeof chunk === "object") chunk = chunk.toString();
			if (this.carriedFromPrevious !== void 0) {
				chunk = `${this.carriedFromPrevious}${chunk}`;
				this.carriedFromPrevious = void 0;
			}
			let limit = chunk.length;
			const lastCode = chunk.charCodeAt(limit - 1);
			if (!end && (lastCode === CR || lastCode >= 55296 && lastCode <= 56319)) {
				this.carriedFromPrevious = chunk[limit - 1];
				limit--;
				chunk = chunk.slice(0, limit);
			}
			const { stateTable } = this;
			this.chunk = chunk;
			this.i = 0;
			while (this.i < limit) stateTable[this.state].call(this);
			this.chunkPosition += limit;
			return end ? this.end() : this;
		}
		/**
		* Close the current stream. Perform final well-formedness checks and reset
		* the parser tstate.
		*
		* @returns this
		*/
		close() {
			return this.write(null);
		}
		/**
		* Get a single code point out of the current chunk. This updates the current
		* position if we do position tracking.
		*
		* This is the algorithm to use for XML 1.0.
		*
		* @returns The character read.
		*/
		getCode10() {
			const { chunk, i } = this;
			this.prevI = i;
			this.i = i + 1;
			if (i >= chunk.length) return EOC;
			const code = chunk.charCodeAt(i);
			this.column++;
			if (code < 55296) {
				if (code >= SPACE || code === TAB) return code;
				switch (code) {
					case NL:
						this.line++;
						this.column = 0;
						this.positionAtNewLine = this.position;
						return NL;
					case CR:
						if (chunk.charCodeAt(i + 1) === NL) this.i = i + 2;
						this.line++;
						this.column = 0;
						this.positionAtNewLine = this.position;
						return NL_LIKE;
					default:
						this.fail("disallowed character.");
						return code;
				}
			}
			if (code > 56319) {
				if (!(code >= 57344 && code <= 65533)) this.fail("disallowed character.");
				return code;
			}
			const final = 65536 + (code - 55296) * 1024 + (chunk.charCodeAt(i + 1) - 56320);
			this.i = i + 2;
			if (final > 1114111) this.fail("disallowed character.");
			return final;
		}
		/**
		* Get a single code point out of the current chunk. This updates the current
		* position if we do position tracking.
		*
		* This is the algorithm to use for XML 1.1.
		*
		* @returns {number} The character read.
		*/
		getCode11() {
			const { chunk, i } = this;
			this.prevI = i;
			this.i = i + 1;
			if (i >= chunk.length) return EOC;
			const code = chunk.charCodeAt(i);
			this.column++;
			if (code < 55296) {
				if (code > 31 && code < 127 || code > 159 && code !== LS || code === TAB) return code;
				switch (code) {
					case NL:
						this.line++;
						this.column = 0;
						this.positionAtNewLine = this.position;
						return NL;
					case CR: {
						const next = chunk.charCodeAt(i + 1);
						if (next === NL || next === NEL) this.i = i + 2;
					}
					case NEL:
					case LS:
						this.line++;
						this.column = 0;
						this.positionAtNewLine = this.position;
						return NL_LIKE;
					default:
						this.fail("disallowed character.");
						return code;
				}
			}
			if (code > 56319) {
				if (!(code >= 57344 && code <= 65533)) this.fail("disallowed character.");
				return code;
			}
			const final = 65536 + (code - 55296) * 1024 + (chunk.charCodeAt(i + 1) - 56320);
			this.i = i + 2;
			if (final > 1114111) this.fail("disallowed character.");
			return final;
		}
		/**
		* Like ``getCode`` but with the return value normalized so that ``NL`` is
		* returned for ``NL_LIKE``.
		*/
		getCodeNorm() {
			const c = this.getCode();
			return c === NL_LIKE ? NL : c;
		}
		unget() {
			this.i = this.prevI;
			this.column--;
		}
		/**
		* Capture characters into a buffer until encountering one of a set of
		* characters.
		*
		* @param chars An array of codepoints. Encountering a character in the array
		* ends the capture. (``chars`` may safely contain ``NL``.)
		*
		* @return The character code that made the capture end, or ``EOC`` if we hit
		* the end of the chunk. The return value cannot be NL_LIKE: NL is returned
		* instead.
		*/
		captureTo(chars) {
			let { i: start } = this;
			const { chunk } = this;
			while (true) {
				const c = this.getCode();
				const isNLLike = c === NL_LIKE;
				const final = isNLLike ? NL : c;
				if (final === EOC || chars.includes(final)) {
					this.text += chunk.slice(start, this.prevI);
					return final;
				}
				if (isNLLike) {
					this.text += `${chunk.slice(start, this.prevI)}\n`;
					start = this.i;
				}
			}
		}
		/**
		* Capture characters into a buffer until encountering a character.
		*
		* @param char The codepoint that ends the capture. **NOTE ``char`` MAY NOT
		* CONTAIN ``NL``.** Passing ``NL`` will result in buggy behavior.
		*
		* @return ``true`` if we ran into the character. Otherwise, we ran into the
		* end of the current chunk.
		*/
		captureToChar(char) {
			let { i: start } = this;
			const { chunk } = this;
			while (true) {
				let c = this.getCode();
				switch (c) {
					case NL_LIKE:
						this.text += `${chunk.slice(start, this.prevI)}\n`;
						start = this.i;
						c = NL;
						break;
					case EOC:
						this.text += chunk.slice(start);
						return false;
				}
				if (c === char) {
					this.text += chunk.slice(start, this.prevI);
					return true;
				}
			}
		}
		/**
		* Capture characters that satisfy ``isNameChar`` into the ``name`` field of
		* this parser.
		*
		* @return The character code that made the test fail, or ``EOC`` if we hit
		* the end of the chunk. The return value cannot be NL_LIKE: NL is returned
		* instead.
		*/
		captureNameChars() {
			const { chunk, i: start } = this;
			while (true) {
				const c = this.getCode();
				if (c === EOC) {
					this.name += chunk.slice(start);
					return EOC;
				}
				if (!isNameChar(c)) {
					this.name += chunk.slice(start, this.prevI);
					return c === NL_LIKE ? NL : c;
				}
			}
		}
		/**
		* Skip white spaces.
		*
		* @return The character that ended the skip, or ``EOC`` if we hit
		* the end of the chunk. The return value cannot be NL_LIKE: NL is returned
		* instead.
		*/
		skipSpaces() {
			while (true) {
				const c = this.getCodeNorm();
				if (c === EOC || !isS(c)) return c;
			}
		}
		setXMLVersion(version) {
			this.currentXMLVersion = version;
			if (version === "1.0") {
				this.isChar = isChar10;
				this.getCode = this.getCode10;
			} else {
				this.isChar = isChar11;
				this.getCode = this.getCode11;
			}
		}
		sBegin() {
			if (this.chunk.charCodeAt(0) === 65279) {
				this.i++;
				this.column++;
			}
			this.state = S_BEGIN_WHITESPACE;
		}
		sBeginWhitespace() {
			const iBefore = this.i;
			const c = this.skipSpaces();
			if (this.prevI !== iBefore) this.xmlDeclPossible = false;
			switch (c) {
				case LESS:
					this.state = S_OPEN_WAKA;
					if (this.text.length !== 0) throw new Error("no-empty text at start");
					break;
				case EOC: break;
				default:
					this.unget();
					this.state = S_TEXT;
					this.xmlDeclPossible = false;
			}
		}
		sDoctype() {
			var _a;
			const c = this.captureTo(DOCTYPE_TERMINATOR);
			switch (c) {
				case GREATER:
					(_a = this.doctypeHandler) === null || _a === void 0 || _a.call(this, this.text);
					this.text = "";
					this.state = S_TEXT;
					this.doctype = true;
					break;
				case EOC: break;
				default:
					this.text += String.fromCodePoint(c);
					if (c === OPEN_BRACKET) this.state = S_DTD;
					else if (isQuote(c)) {
						this.state = S_DOCTYPE_QUOTE;
						this.q = c;
					}
			}
		}
		sDoctypeQuote() {
			const q = this.q;
			if (this.captureToChar(q)) {
				this.text += String.fromCodePoint(q);
				this.q = null;
				this.state = S_DOCTYPE;
			}
		}
		sDTD() {
			const c = this.captureTo(DTD_TERMINATOR);
			if (c === EOC) return;
			this.text += String.fromCodePoint(c);
			if (c === CLOSE_BRACKET) this.state = S_DOCTYPE;
			else if (c === LESS) this.state = S_DTD_OPEN_WAKA;
			else if (isQuote(c)) {
				this.state = S_DTD_QUOTED;
				this.q = c;
			}
		}
		sDTDQuoted() {
			const q = this.q;
			if (this.captureToChar(q)) {
				this.text += String.fromCodePoint(q);
				this.state = S_DTD;
				this.q = null;
			}
		}
		sDTDOpenWaka() {
			const c = this.getCodeNorm();
			this.text += String.fromCodePoint(c);
			switch (c) {
				case BANG:
					this.state = S_DTD_OPEN_WAKA_BANG;
					this.openWakaBang = "";
					break;
				case QUESTION:
					this.state = S_DTD_PI;
					break;
				default: this.state = S_DTD;
			}
		}
		sDTDOpenWakaBang() {
			const char = String.fromCodePoint(this.getCodeNorm());
			const owb = this.openWakaBang += char;
			this.text += char;
			if (owb !== "-") {
				this.state = owb === "--" ? S_DTD_COMMENT : S_DTD;
				this.openWakaBang = "";
			}
		}
		sDTDComment() {
			if (this.captureToChar(MINUS)) {
				this.text += "-";
				this.state = S_DTD_COMMENT_ENDING;
			}
		}
		sDTDCommentEnding() {
			const c = this.getCodeNorm();
			this.text += String.fromCodePoint(c);
			this.state = c === MINUS ? S_DTD_COMMENT_ENDED : S_DTD_COMMENT;
		}
		sDTDCommentEnded() {
			const c = this.getCodeNorm();
			this.text += String.fromCodePoint(c);
			if (c === GREATER) this.state = S_DTD;
			else {
				this.fail("malformed comment.");
				this.state = S_DTD_COMMENT;
			}
		}
		sDTDPI() {
			if (this.captureToChar(QUESTION)) {
				this.text += "?";
				this.state = S_DTD_PI_ENDING;
			}
		}
		sDTDPIEnding() {
			const c = this.getCodeNorm();
			this.text += String.fromCodePoint(c);
			if (c === GREATER) this.state = S_DTD;
		}
		sText() {
			if (this.tags.length !== 0) this.handleTextInRoot();
			else this.handleTextOutsideRoot();
		}
		sEntity() {
			let { i: start } = this;
			const { chunk } = this;
			loop: while (true) switch (this.getCode()) {
				case NL_LIKE:
					this.entity += `${chunk.slice(start, this.prevI)}\n`;
					start = this.i;
					break;
				case SEMICOLON: {
					const { entityReturnState } = this;
					const entity = this.entity + chunk.slice(start, this.prevI);
					this.state = entityReturnState;
					let parsed;
					if (entity === "") {
						this.fail("empty entity name.");
						parsed = "&;";
					} else {
						parsed = this.parseEntity(entity);
						this.entity = "";
					}
					if (entityReturnState !== S_TEXT || this.textHandler !== void 0) this.text += parsed;
					break loop;
				}
				case EOC:
					this.entity += chunk.slice(start);
					break loop;
			}
		}
		sOpenWaka() {
			const c = this.getCode();
			if (isNameStartChar(c)) {
				this.state = S_OPEN_TAG;
				this.unget();
				this.xmlDeclPossible = false;
			} else switch (c) {
				case FORWARD_SLASH:
					this.state = S_CLOSE_TAG;
					this.xmlDeclPossible = false;
					break;
				case BANG:
					this.state = S_OPEN_WAKA_BANG;
					this.openWakaBang = "";
					this.xmlDeclPossible = false;
					break;
				case QUESTION:
					this.state = S_PI_FIRST_CHAR;
					break;
				default:
					this.fail("disallowed character in tag name");
					this.state = S_TEXT;
					this.xmlDeclPossible = false;
			}
		}
		sOpenWakaBang() {
			this.openWakaBang += String.fromCodePoint(this.getCodeNorm());
			switch (this.openWakaBang) {
				case "[CDATA[":
					if (!this.sawRoot && !this.reportedTextBeforeRoot) {
						this.fail("text data outside of root node.");
						this.reportedTextBeforeRoot = true;
					}
					if (this.closedRoot && !this.reportedTextAfterRoot) {
						this.fail("text data outside of root node.");
						this.reportedTextAfterRoot = true;
					}
					this.state = S_CDATA;
					this.openWakaBang = "";
					break;
				case "--":
					this.state = S_COMMENT;
					this.openWakaBang = "";
					break;
				case "DOCTYPE":
					this.state = S_DOCTYPE;
					if (this.doctype || this.sawRoot) this.fail("inappropriately located doctype declaration.");
					this.openWakaBang = "";
					break;
				default: if (this.openWakaBang.length >= 7) this.fail("incorrect syntax.");
			}
		}
		sComment() {
			if (this.captureToChar(MINUS)) this.state = S_COMMENT_ENDING;
		}
		sCommentEnding() {
			var _a;
			const c = this.getCodeNorm();
			if (c === MINUS) {
				this.state = S_COMMENT_ENDED;
				(_a = this.commentHandler) === null || _a === void 0 || _a.call(this, this.text);
				this.text = "";
			} else {
				this.text += `-${String.fromCodePoint(c)}`;
				this.state = S_COMMENT;
			}
		}
		sCommentEnded() {
			const c = this.getCodeNorm();
			if (c !== GREATER) {
				this.fail("malformed comment.");
				this.text += `--${String.fromCodePoint(c)}`;
				this.state = S_COMMENT;
			} else this.state = S_TEXT;
		}
		sCData() {
			if (this.captureToChar(CLOSE_BRACKET)) this.state = S_CDATA_ENDING;
		}
		sCDataEnding() {
			const c = this.getCodeNorm();
			if (c === CLOSE_BRACKET) this.state = S_CDATA_ENDING_2;
			else {
				this.text += `]${String.fromCodePoint(c)}`;
				this.state = S_CDATA;
			}
		}
		sCDataEnding2() {
			var _a;
			const c = this.getCodeNorm();
			switch (c) {
				case GREATER:
					(_a = this.cdataHandler) === null || _a === void 0 || _a.call(this, this.text);
					this.text = "";
					this.state = S_TEXT;
					break;
				case CLOSE_BRACKET:
					this.text += "]";
					break;
				default:
					this.text += `]]${String.fromCodePoint(c)}`;
					this.state = S_CDATA;
			}
		}
		sPIFirstChar() {
			const c = this.getCodeNorm();
			if (this.nameStartCheck(c)) {
				this.piTarget += String.fromCodePoint(c);
				this.state = S_PI_REST;
			} else if (c === QUESTION || isS(c)) {
				this.fail("processing instruction without a target.");
				this.state = c === QUESTION ? S_PI_ENDING : S_PI_BODY;
			} else {
				this.fail("disallowed character in processing instruction name.");
				this.piTarget += String.fromCodePoint(c);
				this.state = S_PI_REST;
			}
		}
		sPIRest() {
			const { chunk, i: start } = this;
			while (true) {
				const c = this.getCodeNorm();
				if (c === EOC) {
					this.piTarget += chunk.slice(start);
					return;
				}
				if (!this.nameCheck(c)) {
					this.piTarget += chunk.slice(start, this.prevI);
					const isQuestion = c === QUESTION;
					if (isQuestion || isS(c)) {
						if (this.piTarget === "xml") {
							if (!this.xmlDeclPossible) this.fail("an XML declaration must be at the start of the document.");
							this.state = isQuestion ? S_XML_DECL_ENDING : S_XML_DECL_NAME_START;
						} else this.state = isQuestion ? S_PI_ENDING : S_PI_BODY;
					} else {
						this.fail("disallowed character in processing instruction name.");
						this.piTarget += String.fromCodePoint(c);
					}
					break;
				}
			}
		}
		sPIBody() {
			if (this.text.length === 0) {
				const c = this.getCodeNorm();
				if (c === QUESTION) this.state = S_PI_ENDING;
				else if (!isS(c)) this.text = String.fromCodePoint(c);
			} else if (this.captureToChar(QUESTION)) this.state = S_PI_ENDING;
		}
		sPIEnding() {
			var _a;
			const c = this.getCodeNorm();
			if (c === GREATER) {
				const { piTarget } = this;
				if (piTarget.toLowerCase() === "xml") this.fail("the XML declaration must appear at the start of the document.");
				(_a = this.piHandler) === null || _a === void 0 || _a.call(this, {
					target: piTarget,
					body: this.text
				});
				this.piTarget = this.text = "";
				this.state = S_TEXT;
			} else if (c === QUESTION) this.text += "?";
			else {
				this.text += `?${String.fromCodePoint(c)}`;
				this.state = S_PI_BODY;
			}
			this.xmlDeclPossible = false;
		}
		sXMLDeclNameStart() {
			const c = this.skipSpaces();
			if (c === QUESTION) {
				this.state = S_XML_DECL_ENDING;
				return;
			}
			if (c !== EOC) {
				this.state = S_XML_DECL_NAME;
				this.name = String.fromCodePoint(c);
			}
		}
		sXMLDeclName() {
			const c = this.captureTo(XML_DECL_NAME_TERMINATOR);
			if (c === QUESTION) {
				this.state = S_XML_DECL_ENDING;
				this.name += this.text;
				this.text = "";
				this.fail("XML declaration is incomplete.");
				return;
			}
			if (!(isS(c) || c === EQUAL)) return;
			this.name += this.text;
			this.text = "";
			if (!this.xmlDeclExpects.includes(this.name)) switch (this.name.length) {
				case 0:
					this.fail("did not expect any more name/value pairs.");
					break;
				case 1:
					this.fail(`expected the name ${this.xmlDeclExpects[0]}.`);
					break;
				default: this.fail(`expected one of ${this.xmlDeclExpects.join(", ")}`);
			}
			this.state = c === EQUAL ? S_XML_DECL_VALUE_START : S_XML_DECL_EQ;
		}
		sXMLDeclEq() {
			const c = this.getCodeNorm();
			if (c === QUESTION) {
				this.state = S_XML_DECL_ENDING;
				this.fail("XML declaration is incomplete.");
				return;
			}
			if (isS(c)) return;
			if (c !== EQUAL) this.fail("value required.");
			this.state = S_XML_DECL_VALUE_START;
		}
		sXMLDeclValueStart() {
			const c = this.getCodeNorm();
			if (c === QUESTION) {
				this.state = S_XML_DECL_ENDING;
				this.fail("XML declaration is incomplete.");
				return;
			}
			if (isS(c)) return;
			if (!isQuote(c)) {
				this.fail("value must be quoted.");
				this.q = SPACE;
			} else this.q = c;
			this.state = S_XML_DECL_VALUE;
		}
		sXMLDeclValue() {
			const c = this.captureTo([this.q, QUESTION]);
			if (c === QUESTION) {
				this.state = S_XML_DECL_ENDING;
				this.text = "";
				this.fail("XML declaration is incomplete.");
				return;
			}
			if (c === EOC) return;
			const value = this.text;
			this.text = "";
			switch (this.name) {
				case "version": {
					this.xmlDeclExpects = ["encoding", "standalone"];
					const version = value;
					this.xmlDecl.version = version;
					if (!/^1\.[0-9]+$/.test(version)) this.fail("version number must match /^1\\.[0-9]+$/.");
					else if (!this.opt.forceXMLVersion) this.setXMLVersion(version);
					break;
				}
				case "encoding":
					if (!/^[A-Za-z][A-Za-z0-9._-]*$/.test(value)) this.fail("encoding value must match /^[A-Za-z0-9][A-Za-z0-9._-]*$/.");
					this.xmlDeclExpects = ["standalone"];
					this.xmlDecl.encoding = value;
					break;
				case "standalone":
					if (value !== "yes" && value !== "no") this.fail("standalone value must match \"yes\" or \"no\".");
					this.xmlDeclExpects = [];
					this.xmlDecl.standalone = value;
			}
			this.name = "";
			this.state = S_XML_DECL_SEPARATOR;
		}
		sXMLDeclSeparator() {
			const c = this.getCodeNorm();
			if (c === QUESTION) {
				this.state = S_XML_DECL_ENDING;
				return;
			}
			if (!isS(c)) {
				this.fail("whitespace required.");
				this.unget();
			}
			this.state = S_XML_DECL_NAME_START;
		}
		sXMLDeclEnding() {
			var _a;
			if (this.getCodeNorm() === GREATER) {
				if (this.piTarget !== "xml") this.fail("processing instructions are not allowed before root.");
				else if (this.name !== "version" && this.xmlDeclExpects.includes("version")) this.fail("XML declaration must contain a version.");
				(_a = this.xmldeclHandler) === null || _a === void 0 || _a.call(this, this.xmlDecl);
				this.name = "";
				this.piTarget = this.text = "";
				this.state = S_TEXT;
			} else this.fail("The character ? is disallowed anywhere in XML declarations.");
			this.xmlDeclPossible = false;
		}
		sOpenTag() {
			var _a;
			const c = this.captureNameChars();
			if (c === EOC) return;
			const tag = this.tag = {
				name: this.name,
				attributes: Object.create(null)
			};
			this.name = "";
			if (this.xmlnsOpt) this.topNS = tag.ns = Object.create(null);
			(_a = this.openTagStartHandler) === null || _a === void 0 || _a.call(this, tag);
			this.sawRoot = true;
			if (!this.fragmentOpt && this.closedRoot) this.fail("documents may contain only one root.");
			switch (c) {
				case GREATER:
					this.openTag();
					break;
				case FORWARD_SLASH:
					this.state = S_OPEN_TAG_SLASH;
					break;
				default:
					if (!isS(c)) this.fail("disallowed character in tag name.");
					this.state = S_ATTRIB;
			}
		}
		sOpenTagSlash() {
			if (this.getCode() === GREATER) this.openSelfClosingTag();
			else {
				this.fail("forward-slash in opening tag not followed by >.");
				this.state = S_ATTRIB;
			}
		}
		sAttrib() {
			const c = this.skipSpaces();
			if (c === EOC) return;
			if (isNameStartChar(c)) {
				this.unget();
				this.state = S_ATTRIB_NAME;
			} else if (c === GREATER) this.openTag();
			else if (c === FORWARD_SLASH) this.state = S_OPEN_TAG_SLASH;
			else this.fail("disallowed character in attribute name.");
		}
		sAttribName() {
			const c = this.captureNameChars();
			if (c === EQUAL) this.state = S_ATTRIB_VALUE;
			else if (isS(c)) this.state = S_ATTRIB_NAME_SAW_WHITE;
			else if (c === GREATER) {
				this.fail("attribute without value.");
				this.pushAttrib(this.name, this.name);
				this.name = this.text = "";
				this.openTag();
			} else if (c !== EOC) this.fail("disallowed character in attribute name.");
		}
		sAttribNameSawWhite() {
			const c = this.skipSpaces();
			switch (c) {
				case EOC: return;
				case EQUAL:
					this.state = S_ATTRIB_VALUE;
					break;
				default:
					this.fail("attribute without value.");
					this.text = "";
					this.name = "";
					if (c === GREATER) this.openTag();
					else if (isNameStartChar(c)) {
						this.unget();
						this.state = S_ATTRIB_NAME;
					} else {
						this.fail("disallowed character in attribute name.");
						this.state = S_ATTRIB;
					}
			}
		}
		sAttribValue() {
			const c = this.getCodeNorm();
			if (isQuote(c)) {
				this.q = c;
				this.state = S_ATTRIB_VALUE_QUOTED;
			} else if (!isS(c)) {
				this.fail("unquoted attribute value.");
				this.state = S_ATTRIB_VALUE_UNQUOTED;
				this.unget();
			}
		}
		sAttribValueQuoted() {
			const { q, chunk } = this;
			let { i: start } = this;
			while (true) switch (this.getCode()) {
				case q:
					this.pushAttrib(this.name, this.text + chunk.slice(start, this.prevI));
					this.name = this.text = "";
					this.q = null;
					this.state = S_ATTRIB_VALUE_CLOSED;
					return;
				case AMP:
					this.text += chunk.slice(start, this.prevI);
					this.state = S_ENTITY;
					this.entityReturnState = S_ATTRIB_VALUE_QUOTED;
					return;
				case NL:
				case NL_LIKE:
				case TAB:
					this.text += `${chunk.slice(start, this.prevI)} `;
					start = this.i;
					break;
				case LESS:
					this.text += chunk.slice(start, this.prevI);
					this.fail("disallowed character.");
					return;
				case EOC:
					this.text += chunk.slice(start);
					return;
			}
		}
		sAttribValueClosed() {
			const c = this.getCodeNorm();
			if (isS(c)) this.state = S_ATTRIB;
			else if (c === GREATER) this.openTag();
			else if (c === FORWARD_SLASH) this.state = S_OPEN_TAG_SLASH;
			else if (isNameStartChar(c)) {
				this.fail("no whitespace between attributes.");
				this.unget();
				this.state = S_ATTRIB_NAME;
			} else this.fail("disallowed character in attribute name.");
		}
		sAttribValueUnquoted() {
			const c = this.captureTo(ATTRIB_VALUE_UNQUOTED_TERMINATOR);
			switch (c) {
				case AMP:
					this.state = S_ENTITY;
					this.entityReturnState = S_ATTRIB_VALUE_UNQUOTED;
					break;
				case LESS:
					this.fail("disallowed character.");
					break;
				case EOC: break;
				default:
					if (this.text.includes("]]>")) this.fail("the string \"]]>\" is disallowed in char data.");
					this.pushAttrib(this.name, this.text);
					this.name = this.text = "";
					if (c === GREATER) this.openTag();
					else this.state = S_ATTRIB;
			}
		}
		sCloseTag() {
			const c = this.captureNameChars();
			if (c === GREATER) this.closeTag();
			else if (isS(c)) this.state = S_CLOSE_TAG_SAW_WHITE;
			else if (c !== EOC) this.fail("disallowed character in closing tag.");
		}
		sCloseTagSawWhite() {
			switch (this.skipSpaces()) {
				case GREATER:
					this.closeTag();
					break;
				case EOC: break;
				default: this.fail("disallowed character in closing tag.");
			}
		}
		handleTextInRoot() {
			let { i: start, forbiddenState } = this;
			const { chunk, textHandler: handler } = this;
			scanLoop: while (true) switch (this.getCode()) {
				case LESS:
					this.state = S_OPEN_WAKA;
					if (handler !== void 0) {
						const { text } = this;
						const slice = chunk.slice(start, this.prevI);
						if (text.length !== 0) {
							handler(text + slice);
							this.text = "";
						} else if (slice.length !== 0) handler(slice);
					}
					forbiddenState = FORBIDDEN_START;
					break scanLoop;
				case AMP:
					this.state = S_ENTITY;
					this.entityReturnState = S_TEXT;
					if (handler !== void 0) this.text += chunk.slice(start, this.prevI);
					forbiddenState = FORBIDDEN_START;
					break scanLoop;
				case CLOSE_BRACKET:
					switch (forbiddenState) {
						case FORBIDDEN_START:
							forbiddenState = FORBIDDEN_BRACKET;
							break;
						case FORBIDDEN_BRACKET:
							forbiddenState = FORBIDDEN_BRACKET_BRACKET;
							break;
						case FORBIDDEN_BRACKET_BRACKET: break;
						default: throw new Error("impossible state");
					}
					break;
				case GREATER:
					if (forbiddenState === FORBIDDEN_BRACKET_BRACKET) this.fail("the string \"]]>\" is disallowed in char data.");
					forbiddenState = FORBIDDEN_START;
					break;
				case NL_LIKE:
					if (handler !== void 0) this.text += `${chunk.slice(start, this.prevI)}\n`;
					start = this.i;
					forbiddenState = FORBIDDEN_START;
					break;
				case EOC:
					if (handler !== void 0) this.text += chunk.slice(start);
					break scanLoop;
				default: forbiddenState = FORBIDDEN_START;
			}
			this.forbiddenState = forbiddenState;
		}
		handleTextOutsideRoot() {
			let { i: start } = this;
			const { chunk, textHandler: handler } = this;
			let nonSpace = false;
			outRootLoop: while (true) {
				const code = this.getCode();
				switch (code) {
					case LESS:
						this.state = S_OPEN_WAKA;
						if (handler !== void 0) {
							const { text } = this;
							const slice = chunk.slice(start, this.prevI);
							if (text.length !== 0) {
								handler(text + slice);
								this.text = "";
							} else if (slice.length !== 0) handler(slice);
						}
						break outRootLoop;
					case AMP:
						this.state = S_ENTITY;
						this.entityReturnState = S_TEXT;
						if (handler !== void 0) this.text += chunk.slice(start, this.prevI);
						nonSpace = true;
						break outRootLoop;
					case NL_LIKE:
						if (handler !== void 0) this.text += `${chunk.slice(start, this.prevI)}\n`;
						start = this.i;
						break;
					case EOC:
						if (handler !== void 0) this.text += chunk.slice(start);
						break outRootLoop;
					default: if (!isS(code)) nonSpace = true;
				}
			}
			if (!nonSpace) return;
			if (!this.sawRoot && !this.reportedTextBeforeRoot) {
				this.fail("text data outside of root node.");
				this.reportedTextBeforeRoot = true;
			}
			if (this.closedRoot && !this.reportedTextAfterRoot) {
				this.fail("text data outside of root node.");
				this.reportedTextAfterRoot = true;
			}
		}
		pushAttribNS(name, value) {
			var _a;
			const { prefix, local } = this.qname(name);
			const attr = {
				name,
				prefix,
				local,
				value
			};
			this.attribList.push(attr);
			(_a = this.attributeHandler) === null || _a === void 0 || _a.call(this, attr);
			if (prefix === "xmlns") {
				const trimmed = value.trim();
				if (this.currentXMLVersion === "1.0" && trimmed === "") this.fail("invalid attempt to undefine prefix in XML 1.0");
				this.topNS[local] = trimmed;
				nsPairCheck(this, local, trimmed);
			} else if (name === "xmlns") {
				const trimmed = value.trim();
				this.topNS[""] = trimmed;
				nsPairCheck(this, "", trimmed);
			}
		}
		pushAttribPlain(name, value) {
			var _a;
			const attr = {
				name,
				value
			};
			this.attribList.push(attr);
			(_a = this.attributeHandler) === null || _a === void 0 || _a.call(this, attr);
		}
		/**
		* End parsing. This performs final well-formedness checks and resets the
		* parser to a clean state.
		*
		* @returns this
		*/
		end() {
			var _a, _b;
			if (!this.sawRoot) this.fail("document must contain a root element.");
			const { tags } = this;
			while (tags.length > 0) {
				const tag = tags.pop();
				this.fail(`unclosed tag: ${tag.name}`);
			}
			if (this.state !== S_BEGIN && this.state !== S_TEXT) this.fail("unexpected end.");
			const { text } = this;
			if (text.length !== 0) {
				(_a = this.textHandler) === null || _a === void 0 || _a.call(this, text);
				this.text = "";
			}
			this._closed = true;
			(_b = this.endHandler) === null || _b === void 0 || _b.call(this);
			this._init();
			return this;
		}
		/**
		* Resolve a namespace prefix.
		*
		* @param prefix The prefix to resolve.
		*
		* @returns The namespace URI or ``undefined`` if the prefix is not defined.
		*/
		resolve(prefix) {
			var _a, _b;
			let uri = this.topNS[prefix];
			if (uri !== void 0) return uri;
			const { tags } = this;
			for (let index = tags.length - 1; index >= 0; index--) {
				uri = tags[index].ns[prefix];
				if (uri !== void 0) return uri;
			}
			uri = this.ns[prefix];
			if (uri !== void 0) return uri;
			return (_b = (_a = this.opt).resolvePrefix) === null || _b === void 0 ? void 0 : _b.call(_a, prefix);
		}
		/**
		* Parse a qname into its prefix and local name parts.
		*
		* @param name The name to parse
		*
		* @returns
		*/
		qname(name) {
			const colon = name.indexOf(":");
			if (colon === -1) return {
				prefix: "",
				local: name
			};
			const local = name.slice(colon + 1);
			const prefix = name.slice(0, colon);
			if (prefix === "" || local === "" || local.includes(":")) this.fail(`malformed name: ${name}.`);
			return {
				prefix,
				local
			};
		}
		processAttribsNS() {
			var _a;
			const { attribList } = this;
			const tag = this.tag;
			{
				const { prefix, local } = this.qname(tag.name);
				tag.prefix = prefix;
				tag.local = local;
				const uri = tag.uri = (_a = this.resolve(prefix)) !== null && _a !== void 0 ? _a : "";
				if (prefix !== "") {
					if (prefix === "xmlns") this.fail("tags may not have \"xmlns\" as prefix.");
					if (uri === "") {
						this.fail(`unbound namespace prefix: ${JSON.stringify(prefix)}.`);
						tag.uri = prefix;
					}
				}
			}
			if (attribList.length === 0) return;
			const { attributes } = tag;
			const seen = /* @__PURE__ */ new Set();
			for (const attr of attribList) {
				const { name, prefix, local } = attr;
				let uri;
				let eqname;
				if (prefix === "") {
					uri = name === "xmlns" ? XMLNS_NAMESPACE : "";
					eqname = name;
				} else {
					uri = this.resolve(prefix);
					if (uri === void 0) {
						this.fail(`unbound namespace prefix: ${JSON.stringify(prefix)}.`);
						uri = prefix;
					}
					eqname = `{${uri}}${local}`;
				}
				if (seen.has(eqname)) this.fail(`duplicate attribute: ${eqname}.`);
				seen.add(eqname);
				attr.uri = uri;
				attributes[name] = attr;
			}
			this.attribList = [];
		}
		processAttribsPlain() {
			const { attribList } = this;
			const attributes = this.tag.attributes;
			for (const { name, value } of attribList) {
				if (attributes[name] !== void 0) this.fail(`duplicate attribute: ${name}.`);
				attributes[name] = value;
			}
			this.attribList = [];
		}
		/**
		* Handle a complete open tag. This parser code calls this once it has seen
		* the whole tag. This method checks for well-formeness and then emits
		* ``onopentag``.
		*/
		openTag() {
			var _a;
			this.processAttribs();
			const { tags } = this;
			const tag = this.tag;
			tag.isSelfClosing = false;
			(_a = this.openTagHandler) === null || _a === void 0 || _a.call(this, tag);
			tags.push(tag);
			this.state = S_TEXT;
			this.name = "";
		}
		/**
		* Handle a complete self-closing tag. This parser code calls this once it has
		* seen the whole tag. This method checks for well-formeness and then emits
		* ``onopentag`` and ``onclosetag``.
		*/
		openSelfClosingTag() {
			var _a, _b, _c;
			this.processAttribs();
			const { tags } = this;
			const tag = this.tag;
			tag.isSelfClosing = true;
			(_a = this.openTagHandler) === null || _a === void 0 || _a.call(this, tag);
			(_b = this.closeTagHandler) === null || _b === void 0 || _b.call(this, tag);
			if ((this.tag = (_c = tags[tags.length - 1]) !== null && _c !== void 0 ? _c : null) === null) this.closedRoot = true;
			this.state = S_TEXT;
			this.name = "";
		}
		/**
		* Handle a complete close tag. This parser code calls this once it has seen
		* the whole tag. This method checks for well-formeness and then emits
		* ``onclosetag``.
		*/
		closeTag() {
			const { tags, name } = this;
			this.state = S_TEXT;
			this.name = "";
			if (name === "") {
				this.fail("weird empty close tag.");
				this.text += "</>";
				return;
			}
			const handler = this.closeTagHandler;
			let l = tags.length;
			while (l-- > 0) {
				const tag = this.tag = tags.pop();
				this.topNS = tag.ns;
				handler === null || handler === void 0 || handler(tag);
				if (tag.name === name) break;
				this.fail("unexpected close tag.");
			}
			if (l === 0) this.closedRoot = true;
			else if (l < 0) {
				this.fail(`unmatched closing tag: ${name}.`);
				this.text += `</${name}>`;
			}
		}
		/**
		* Resolves an entity. Makes any necessary well-formedness checks.
		*
		* @param entity The entity to resolve.
		*
		* @returns The parsed entity.
		*/
		parseEntity(entity) {
			if (entity[0] !== "#") {
				const defined = this.ENTITIES[entity];
				if (defined !== void 0) return defined;
				this.fail(this.isName(entity) ? "undefined entity." : "disallowed character in entity name.");
				return `&${entity};`;
			}
			let num = NaN;
			if (entity[1] === "x" && /^#x[0-9a-f]+$/i.test(entity)) num = parseInt(entity.slice(2), 16);
			else if (/^#[0-9]+$/.test(entity)) num = parseInt(entity.slice(1), 10);
			if (!this.isChar(num)) {
				this.fail("malformed character entity.");
				return `&${entity};`;
			}
			return String.fromCodePoint(num);
		}
	};
	exports.SaxesParser = SaxesParser;
})))();
var Broken = class extends Error {};
/**
* Reads markup up to its end or to the first fault once something was read; faults before that are passed
* over, for nothing can be lost yet. Custom entities are never expanded.
*
* @returns the line of the fault that ended it; null when it was read to its end.
* @throws Problem `format-limits` when it is nested too deep.
*/
function readMarkup(text, listener) {
	const parser = new import_saxes.SaxesParser({ xmlns: false });
	const path = [];
	let content = "";
	let fault = null;
	const add = (piece) => {
		if (content.length < limits$38.xmlText) content += piece.slice(0, limits$38.xmlText);
	};
	parser.on("text", add);
	parser.on("cdata", add);
	parser.on("opentag", ({ name, attributes }) => {
		if (path.length === limits$38.xmlDepth) throw tooDeep();
		path.push(local(name));
		content = "";
		listener.open(path.at(-1), attributes);
	});
	parser.on("closetag", () => {
		const name = path.pop() ?? "";
		listener.close(name, content.trim(), path.at(-1) ?? "");
		content = "";
	});
	parser.on("error", () => {
		if (!listener.started()) return;
		fault = parser.line;
		throw new Broken();
	});
	try {
		parser.write(escapeLooseAmpersands(text.trimStart())).close();
	} catch (error) {
		if (!(error instanceof Broken)) throw error;
	}
	return fault;
}
/** A ride called "Up & down", written as it is: the parser would look for the end of an entity for ever. */
function escapeLooseAmpersands(text) {
	return text.replace(/&(?![#\w]{1,16};)/g, "&amp;");
}
function local(name) {
	return name.slice(name.indexOf(":") + 1).toLowerCase();
}
function tooDeep() {
	return new Problem({
		code: "format-limits",
		what: `the elements of this file are nested more than ${limits$38.xmlDepth} deep`,
		hint: "Export the ride again from the head unit or the training app"
	});
}
// src/read/xml/trackpoints.ts
/**
* Elements inside a trackpoint, by local name: those of the two schemas and those that recorders put into
* extensions under prefixes of their own. Units are those of the schemas (m, m/s, °C, W).
*/
const channelOf = /* @__PURE__ */ new Map([
	["watts", "power"],
	["power", "power"],
	["powerinwatts", "power"],
	["cadence", "cadence"],
	["cad", "cadence"],
	["runcadence", "cadence"],
	["hr", "heartRate"],
	["heartrate", "heartRate"],
	["heartratebpm", "heartRate"],
	["speed", "speed"],
	["altitudemeters", "altitude"],
	["ele", "altitude"],
	["distancemeters", "distance"],
	["distance", "distance"],
	["atemp", "temperature"],
	["temp", "temperature"],
	["temperature", "temperature"]
]);
const positions = /* @__PURE__ */ new Set(["latitudedegrees", "longitudedegrees"]);
/** Collects trackpoints, one after another. */
var Trackpoints = class {
	#times = [];
	#columns;
	#unreadable = /* @__PURE__ */ new Map();
	#open = false;
	#zoned = true;
	#positions = false;
	#lastTime = NaN;
	constructor() {
		this.#columns = Object.fromEntries(channels.map((channel) => [channel, []]));
	}
	get count() {
		return this.#times.length;
	}
	/** Whether a trackpoint is open. */
	get open() {
		return this.#open;
	}
	get hasPositions() {
		return this.#positions;
	}
	/** Clock time of the last trackpoint that has one; NaN before. */
	get lastTime() {
		return this.#lastTime;
	}
	/** @throws Problem `format-limits` with too many. */
	begin(hasPosition) {
		if (this.#times.length === limits$38.trackpoints) throw tooMany();
		this.#open = true;
		this.#positions ||= hasPosition;
		this.#times.push(NaN);
		for (const channel of channels) this.#columns[channel].push(NaN);
	}
	end() {
		this.#open = false;
	}
	/** An element inside the open trackpoint. The first value of a channel counts. */
	value(name, text, parent) {
		if (text === "") return;
		const last = this.#times.length - 1;
		if (name === "time") {
			const time = parseClock(text);
			if (time !== null && Number.isNaN(this.#times[last])) {
				this.#times[last] = time.seconds;
				this.#lastTime = time.seconds;
				this.#zoned &&= time.zoned;
			}
		} else if (positions.has(name)) this.#positions = true;
		else {
			const channel = channelOf.get(name === "value" ? parent : name);
			if (channel === void 0 || !Number.isNaN(this.#columns[channel][last])) return;
			const number = decimal(text);
			this.#columns[channel][last] = number;
			if (Number.isNaN(number)) this.#unreadable.set(name, (this.#unreadable.get(name) ?? 0) + 1);
		}
	}
	/** A trackpoint that is still open, because the file breaks off inside it, is left out. */
	assemble() {
		const whole = this.#times.length - (this.#open ? 1 : 0);
		const typed = (values) => Float64Array.from(values.slice(0, whole));
		const columns = channels.map((channel) => [channel, typed(this.#columns[channel])]);
		const assembled = assemble({
			time: typed(this.#times),
			channels: Object.fromEntries(columns),
			meters: []
		});
		const defects = [...this.#unreadable].map(([column, count]) => ({
			id: "unreadable-values",
			values: {
				count,
				column
			}
		}));
		if (!this.#zoned) defects.push({
			id: "zone-assumed",
			values: {}
		});
		return {
			...assembled,
			defects: [...defects, ...assembled.defects]
		};
	}
};
function tooMany() {
	return new Problem({
		code: "format-limits",
		what: `this file holds more than ${limits$38.trackpoints} trackpoints`,
		hint: "Hand in the recording of this ride alone"
	});
}
export { isMeterName as C, sentence$1 as E, eachRow as S, Problem as T, shortName as _, indoorsOf as a, assumedUnits as b, parseClock as c, finite as d, assemble as f, decodeText as g, refuseOutside as h, stated as i, timeSeconds as l, clean as m, readMarkup as n, sportOf as o, main as p, combineTotals as r, dateSeconds as s, Trackpoints as t, decimal as u, findHeadings as v, limits$38 as w, conversionOf as x, firstColumns as y };
