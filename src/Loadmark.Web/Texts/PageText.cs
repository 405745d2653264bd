namespace Loadmark.Web.Texts;

/// <summary>
/// The page's texts, by their English wording. <c>PageText.resx</c> beside this file lists all of them; another language is a file
/// <c>PageText.LANGUAGE.resx</c> of the same names.
/// </summary>
public sealed class PageText;
