// Svelte's own declaration of what a `.svelte` file exports.
/// <reference types="svelte" />
