/** Where the build believes to be served, as manifest.xml has it; a package puts a club's address in its place. */
export const BUILT_FOR = "https://localhost:3000";
