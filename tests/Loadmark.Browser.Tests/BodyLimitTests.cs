using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A body larger than anything the page sends is refused before it is looked at, whoever it is addressed to.</summary>
public sealed class BodyLimitTests(ServedPage served)
{
    private const int OverTheLimit = 3 * 1024 * 1024;

    [Theory]
    [InlineData("/", "application/x-www-form-urlencoded")]
    [InlineData("/_blazor/negotiate?negotiateVersion=1", "text/plain")]
    public async Task A_body_that_no_page_sends_is_refused(string target, string type)
    {
        var answer = await RawAnswer.AskAsync(served.Program, "POST", target, [$"Content-Type: {type}"], new byte[OverTheLimit]);
        Assert.Equal(413, answer.Status);
    }
}
