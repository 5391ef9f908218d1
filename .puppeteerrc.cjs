// On Linux the browser comes inside the npm package @sparticuz/chromium; elsewhere puppeteer installs its own.
module.exports = { skipDownload: process.platform === "linux" };
