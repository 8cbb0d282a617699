/** Made of templates/mail.mjml: change that, and see to it with REGEN=1 in tests/relay/mail-template.test.ts. */
import { escaped } from './escaped.ts';

export interface MailSlotsPartsBlockHeading {
  text: string;
}

export interface MailSlotsPartsBlockAlerts {
  text: string;
}

export interface MailSlotsPartsBlockLines {
  look: string;
  text: string;
}

export interface MailSlotsPartsBlock {
  heading: readonly MailSlotsPartsBlockHeading[];
  alerts: readonly MailSlotsPartsBlockAlerts[];
  lines: readonly MailSlotsPartsBlockLines[];
}

export interface MailSlotsPartsMachineGroupsLinesLinks {
  href: string;
  text: string;
}

export interface MailSlotsPartsMachineGroupsLines {
  look: string;
  text: string;
  links: readonly MailSlotsPartsMachineGroupsLinesLinks[];
}

export interface MailSlotsPartsMachineGroups {
  heading: string;
  lines: readonly MailSlotsPartsMachineGroupsLines[];
}

export interface MailSlotsPartsMachine {
  name: string;
  price: string;
  groups: readonly MailSlotsPartsMachineGroups[];
}

export interface MailSlotsPartsLineUpGroupsBarsSolid {
  percent: string;
}

export interface MailSlotsPartsLineUpGroupsBarsOpen {
  percent: string;
}

export interface MailSlotsPartsLineUpGroupsBars {
  text: string;
  solid: readonly MailSlotsPartsLineUpGroupsBarsSolid[];
  open: readonly MailSlotsPartsLineUpGroupsBarsOpen[];
}

export interface MailSlotsPartsLineUpGroups {
  heading: string;
  bars: readonly MailSlotsPartsLineUpGroupsBars[];
}

export interface MailSlotsPartsLineUp {
  heading: string;
  about: string;
  groups: readonly MailSlotsPartsLineUpGroups[];
}

export interface MailSlotsPartsLink {
  says: string;
  href: string;
  label: string;
}

export interface MailSlotsParts {
  block: readonly MailSlotsPartsBlock[];
  machine: readonly MailSlotsPartsMachine[];
  lineUp: readonly MailSlotsPartsLineUp[];
  link: readonly MailSlotsPartsLink[];
}

export interface MailSlotsFooterLinks {
  href: string;
  text: string;
}

export interface MailSlotsFooter {
  text: string;
  links: readonly MailSlotsFooterLinks[];
}

export interface MailSlots {
  language: string;
  direction: string;
  subject: string;
  preview: string;
  from: string;
  title: string;
  parts: readonly MailSlotsParts[];
  footer: readonly MailSlotsFooter[];
}

export const mailHtml = (its: MailSlots): string => `<!doctype html>
<html lang="${escaped(its.language)}" dir="${escaped(its.direction)}" xmlns="http://www.w3.org/1999/xhtml" xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office">
<head>
<title>${escaped(its.subject)}</title>
<!--[if !mso]><!-->
<meta http-equiv="X-UA-Compatible" content="IE=edge">
<!--<![endif]-->
<meta http-equiv="Content-Type" content="text/html; charset=UTF-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<style type="text/css">
#outlook a { padding:0; }
body { margin:0;padding:0;-webkit-text-size-adjust:100%;-ms-text-size-adjust:100%; }
table, td { border-collapse:collapse;mso-table-lspace:0pt;mso-table-rspace:0pt; }
img { border:0;height:auto;line-height:100%; outline:none;text-decoration:none;-ms-interpolation-mode:bicubic; }
p { display:block;margin:13px 0; }
</style>
<!--[if mso]>
<noscript>
<xml>
<o:OfficeDocumentSettings>
<o:AllowPNG/>
<o:PixelsPerInch>96</o:PixelsPerInch>
</o:OfficeDocumentSettings>
</xml>
</noscript>
<![endif]-->
<!--[if lte mso 11]>
<style type="text/css">
.mj-outlook-group-fix { width:100% !important; }
</style>
<![endif]-->
<style type="text/css">
@media only screen and (min-width:480px) {
.mj-column-per-100 { width:100% !important; max-width: 100%; }
}
</style>
<style media="screen and (min-width:480px)">
.moz-text-html .mj-column-per-100 { width:100% !important; max-width: 100%; }
</style>
<style type="text/css">
:root { color-scheme: light dark; supported-color-schemes: light dark; }
h1, h2, h3, h4, p { overflow-wrap: anywhere; unicode-bidi: plaintext; }
a { color: #6a2c62; overflow-wrap: anywhere; }
.item { padding-left: 18px !important; text-indent: -18px; }
@media (prefers-color-scheme: dark) {
.page, .page div, .page td { background-color: #14181a !important; }
.page div, .page p, .page h1, .page h2, .page h3, .page h4, .page td { color: #e9ecec !important; }
.page a { color: #dba6d2 !important; }
.page .alert { color: #ff9d8d !important; }
.page .lesser { color: #aab3b6 !important; }
.page .ruled { border-top-color: #727c80 !important; }
.page td.solid { background-color: #e9ecec !important; }
.page td.open { border-color: #e9ecec !important; }
.page td.button, .page td.button a { background-color: #dba6d2 !important; color: #24101f !important; }
}
</style>
<meta name="color-scheme" content="light dark">
<meta name="supported-color-schemes" content="light dark">
<meta name="referrer" content="no-referrer">
<meta name="format-detection" content="telephone=no, date=no, address=no, email=no">
</head>
<body class="page" style="word-spacing:normal;background-color:#fdfdfb;">
<div style="display:none;font-size:1px;color:#ffffff;line-height:1px;max-height:0px;max-width:0px;opacity:0;overflow:hidden;">${escaped(its.preview)}</div>
<div
aria-label="${escaped(its.subject)}" aria-roledescription="email" role="article" lang="${escaped(its.language)}" dir="${escaped(its.direction)}" style="word-spacing:normal;background-color:#fdfdfb;"
>
<!--[if mso | IE]><table align="center" border="0" cellpadding="0" cellspacing="0" class="" role="presentation" style="width:640px;" width="640" ><tr><td style="line-height:0px;font-size:0px;mso-line-height-rule:exactly;"><![endif]-->
<div style="margin:0px auto;max-width:640px;">
<table
align="center" border="0" cellpadding="0" cellspacing="0" role="presentation" style="width:100%;"
>
<tbody>
<tr>
<td
style="direction:ltr;font-size:0px;padding:0;text-align:center;"
>
<!--[if mso | IE]><table role="presentation" border="0" cellpadding="0" cellspacing="0"><tr><td class="" style="vertical-align:top;width:640px;" ><![endif]-->
<div
class="mj-column-per-100 mj-outlook-group-fix" style="font-size:0px;text-align:left;direction:ltr;display:inline-block;vertical-align:top;width:100%;"
>
<table
border="0" cellpadding="0" cellspacing="0" role="presentation" style="vertical-align:top;" width="100%"
>
<tbody>
<tr>
<td
align="left" style="font-size:0px;padding:20px 16px 8px;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:24px;text-align:left;color:#1d2326;"
><p style="margin:0">${escaped(its.from)}</p>
<h1 style="margin:4px 0 0;font-size:26px;line-height:32px;font-weight:700">${escaped(its.title)}</h1></div>
</td>
</tr>
${its.parts.map((each0) => `${each0.block.map((each1) => `
<tr>
<td
align="left" style="font-size:0px;padding:8px 16px;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:24px;text-align:left;color:#1d2326;"
>${each1.heading.map((each2) => `<h2 class="ruled" style="margin:12px 0 6px;padding-top:14px;border-top:1px solid #8a9296;font-size:20px;line-height:26px">${escaped(each2.text)}</h2>`).join('')}
${each1.alerts.map((each2) => `<p class="alert item" style="margin:0 0 8px;color:#9c2a1c"><b>${escaped(each2.text)}</b></p>`).join('')}
${each1.lines.map((each2) => `<p class="${escaped(each2.look)}" style="margin:0 0 8px">${escaped(each2.text)}</p>`).join('')}</div>
</td>
</tr>
`).join('')}${each0.machine.map((each1) => `
<tr>
<td
align="left" style="font-size:0px;padding:8px 16px;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:24px;text-align:left;color:#1d2326;"
><h3 class="ruled" style="margin:12px 0 2px;padding-top:14px;border-top:1px solid #8a9296;font-size:20px;line-height:26px">${escaped(each1.name)}</h3>
<p style="margin:0 0 8px"><b>${escaped(each1.price)}</b></p>
${each1.groups.map((each2) => `<h4 style="margin:10px 0 2px;font-size:16px;line-height:24px">${escaped(each2.heading)}</h4>
${each2.lines.map((each3) => `<p class="${escaped(each3.look)}" style="margin:0 0 4px">${escaped(each3.text)}${each3.links.map((each4) => ` <a href="${escaped(each4.href)}" rel="noopener noreferrer">${escaped(each4.text)}</a>`).join('')}</p>`).join('')}`).join('')}</div>
</td>
</tr>
`).join('')}${each0.lineUp.map((each1) => `
<tr>
<td
align="left" style="font-size:0px;padding:8px 16px 0;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:24px;text-align:left;color:#1d2326;"
><h2 class="ruled" style="margin:12px 0 6px;padding-top:14px;border-top:1px solid #8a9296;font-size:20px;line-height:26px">${escaped(each1.heading)}</h2>
<p style="margin:0">${escaped(each1.about)}</p></div>
</td>
</tr>
${each1.groups.map((each2) => `
<tr>
<td
align="left" style="font-size:0px;padding:8px 16px 0;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:24px;text-align:left;color:#1d2326;"
><h4 style="margin:0">${escaped(each2.heading)}</h4></div>
</td>
</tr>
<tr>
<td
align="left" style="font-size:0px;padding:0 16px 8px;word-break:break-word;"
>
<table
cellpadding="0" cellspacing="0" role="presentation" width="100%" border="0" style="color:#1d2326;font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:22px;table-layout:auto;width:100%;border:none;"
>
${each2.bars.map((each3) => `<tr><td style="padding:2px 0 6px"><p style="margin:0 0 2px">${escaped(each3.text)}</p>
${each3.solid.map((each4) => `<table role="presentation" width="${escaped(each4.percent)}%" cellpadding="0" cellspacing="0" style="width:${escaped(each4.percent)}%"><tr><td class="solid" bgcolor="#1d2326" height="8" style="height:8px;line-height:8px;font-size:1px;background-color:#1d2326">&nbsp;</td></tr></table>`).join('')}
${each3.open.map((each4) => `<table role="presentation" width="${escaped(each4.percent)}%" cellpadding="0" cellspacing="0" style="width:${escaped(each4.percent)}%;border-collapse:separate"><tr><td class="open" height="6" style="height:6px;line-height:6px;font-size:1px;border:1px solid #1d2326">&nbsp;</td></tr></table>`).join('')}</td></tr>`).join('')}
</table>
</td>
</tr>
`).join('')}`).join('')}${each0.link.map((each1) => `
<tr>
<td
align="left" style="font-size:0px;padding:8px 16px;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:16px;line-height:24px;text-align:left;color:#1d2326;"
><p style="margin:0 0 10px">${escaped(each1.says)}</p>
<table role="presentation" cellpadding="0" cellspacing="0"><tr><td class="button" bgcolor="#6a2c62" style="background-color:#6a2c62;border-radius:2px"><a href="${escaped(each1.href)}" rel="noopener noreferrer" style="display:inline-block;padding:12px 20px;color:#ffffff;text-decoration:none;font-weight:600">${escaped(each1.label)}</a></td></tr></table></div>
</td>
</tr>
`).join('')}`).join('')}
<tr>
<td
align="left" style="font-size:0px;padding:8px 16px 24px;word-break:break-word;"
>
<div
style="font-family:system-ui, -apple-system, 'Segoe UI', Roboto, Helvetica, Arial, sans-serif;font-size:14px;line-height:21px;text-align:left;color:#515a5e;"
><div class="ruled lesser" style="border-top:1px solid #8a9296;padding-top:14px;color:#515a5e">
${its.footer.map((each0) => `<p class="lesser" style="margin:0 0 8px">${escaped(each0.text)}${each0.links.map((each1) => ` <a href="${escaped(each1.href)}" rel="noopener noreferrer">${escaped(each1.text)}</a>`).join('')}</p>`).join('')}
</div></div>
</td>
</tr>
</tbody>
</table>
</div>
<!--[if mso | IE]></td></tr></table><![endif]-->
</td>
</tr>
</tbody>
</table>
</div>
<!--[if mso | IE]></td></tr></table><![endif]-->
</div>
</body>
</html>
`;
