/** The page before its script runs. Its words and its direction come with the script. */
export const shell = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>foldwright</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="/fonts.css">
<link rel="stylesheet" href="/page.css">
<script type="module" src="/page.js"></script>
</head>
<body><div id="page"></div></body>
</html>
`;
