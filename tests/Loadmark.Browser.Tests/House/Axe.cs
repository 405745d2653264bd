using Deque.AxeCore.Commons;

namespace Loadmark.Browser.Tests.House;

/// <summary>
/// Asks axe-core (Deque Systems) what is wrong with a page as it is now. The script stays in the document once it is there, and only what
/// is wrong comes back. The usual wrapper opens a second page for every question, to put the answers of frames together; no page here has
/// frames.
/// </summary>
internal static class Axe
{
    // In a good page's answer there is always something that passes; of that, one element a rule is told and not each, since making the
    // address of every element takes longer than the rules do.
    private const string Ask = """
        async ([type, values]) => {
            if (document.querySelector("iframe, frame, object, embed"))
                return { passes: 0, violations: ["There is another page in this one, which axe has not seen."] };
            const result = await axe.run(document, { runOnly: { type, values }, resultTypes: ["violations"] });
            return {
                passes: result.passes.length,
                violations: result.violations.flatMap(({ id, help, nodes }) => nodes.map(({ html, any, all, none }) =>
                    `${id}: ${help}; ${html}; ${[...any, ...all, ...none].map(check => check.message).join(" / ")}`)),
            };
        }
        """;

    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>What violates WCAG 2.2 A and AA or the best practices: rule, element and why, a line each.</summary>
    public static Task<string[]> ViolationsAsync(IPage page) =>
        AskAsync(page, "tag", "wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

    /// <summary>What violates rules on colours: all that the same elements could break in other colours.</summary>
    public static Task<string[]> ColoursAsync(IPage page) => AskAsync(page, "rule", "color-contrast", "link-in-text-block");

    private static async Task<string[]> AskAsync(IPage page, string type, params string[] values)
    {
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window"))
            await page.EvaluateAsync(Script);
        await page.EvaluateAsync("() => scrollTo(0, 0)"); // what the bar covers while scrolling is not too small for that
        var answer = await page.EvaluateAsync<Answer>(Ask, new object[] { type, values });
        Assert.True(answer.Passes > 0 || answer.Violations.Length > 0, "axe has seen nothing.");
        return answer.Violations;
    }

    private sealed class Answer
    {
        public int Passes { get; set; }

        public string[] Violations { get; set; } = [];
    }
}
