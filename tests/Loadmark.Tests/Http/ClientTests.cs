using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using NSwag.CodeGeneration.CSharp;

namespace Loadmark.Tests.Http;

/// <summary>A client that a generator makes of the document alone is compiled, and gets its answers from the running host.</summary>
public sealed class ClientTests(SharedHost shared) : IClassFixture<SharedHost>
{
    /// <summary>What somebody writes who has only the generated client.</summary>
    private const string User =
        """
        using System;
        using System.Collections.Generic;
        using System.Linq;
        using System.Net.Http;
        using System.Threading.Tasks;
        using Generated;

        public static class User
        {
            public static async Task<List<string>> AskAsync(HttpClient http, string rig, string prices)
            {
                var client = new LoadmarkClient(http.BaseAddress.ToString(), http);
                var said = new List<string>();

                var readings = await client.ReadAsync(new TextsToRead { Texts = new List<string> { "9V DC 300mA centre negative" } });
                said.Add($"{readings.Single().Polarity} {readings.Single().Modes.Single().Amps}");

                var check = await client.CheckAsync(true, "board.rig.yaml", rig);
                said.Add($"{check.Verdict} {check.File} {check.Outlets.Count} {check.Outlets.First().LimitAmps}");

                var plan = await client.PlanAsync(new[] { "brick" }, null, null, null, rig);
                said.Add($"{plan.Status} {plan.Feeds.Sum(feed => feed.To.Count)} {plan.Feeds.First().Joined is null}");

                var settled = await client.SettleAsync(20, 7, null, rig);
                said.Add($"{settled.Loads.First().State} {settled.Spread.Samples} {settled.Spread.Loads.First().Volts.Count}");

                var started = await client.StartupAsync(null, null, null, rig);
                said.Add($"{started.IsComplete} {started.Events.Count > 0}");

                var bought = await client.BuyAsync(new[] { "9 V 100 mA" }, null, null, true, null, new RigAndPrices { Rig = rig, Prices = prices });
                said.Add($"{bought.Status} {bought.Room.Count}");

                said.Add((await client.NetlistAsync(true, null, rig)).Split('\n')[0]);

                var kept = await client.AddRigAsync(rig);
                var saved = await client.SaveRigAsync(kept.Id, "changing it", $"\"{kept.Revision}\"", rig.Replace("300mA", "310mA"));
                said.Add($"{saved.Revision} {saved.Undo}");
                try
                {
                    await client.SaveRigAsync(kept.Id, null, $"\"{kept.Revision}\"", rig);
                }
                catch (ApiException<Problem> problem)
                {
                    said.Add($"{problem.StatusCode} {problem.Result.Present.Revision} {problem.Result.Type}");
                }

                try
                {
                    await client.CheckAsync(null, null, "rig: [");
                }
                catch (ApiException<Problem> problem)
                {
                    said.Add($"{problem.StatusCode} {problem.Result.Errors.First().Line} {problem.Result.Id.Length > 0}");
                }

                said.Add($"{(await client.GetRigAsync(kept.Id)).Text == rig.Replace("300mA", "310mA")} {(await client.ListRigsAsync()).Rigs.Count}");
                await client.RemoveRigAsync(kept.Id, $"\"{saved.Revision}\"");
                var added = await client.AddGearAsync("typed in", "loads: { delay-2: { label: 9V DC 300mA, words: [pit] } }");
                var changed = await client.ChangeGearAsync("load", "delay-2", null, $"\"{added.Revision}\"", "loads: { delay-2: { label: 9V DC 310mA } }");
                said.Add($"{added.Kind} {changed.Revision} {changed.Changes.Last().Differences.First().After}");
                try
                {
                    await client.RemoveGearAsync("load", "delay-2", "\"1\"");
                }
                catch (ApiException<Problem> problem)
                {
                    said.Add($"{problem.StatusCode} {problem.Result.PresentGear.Revision} {problem.Result.PresentGear.Label}");
                }

                var measured = await client.MeasureGearAsync("load", "delay-2", new WhatTheMeterShowed { Run = "212 mA" });
                said.Add($"{measured.Running.Amps} {measured.Starting is null} {measured.Readings.Single().Of}");
                var imported = await client.ImportGearAsync(new[] { "new" }, null, "tag,label\ndrive-3,9V 12mA\n");
                said.Add($"{imported.Added} {imported.Rows.Single().State}");
                said.Add($"{(await client.ListGearAsync("drive3", "load", 5)).Gear.Single().Tag} {(await client.AffectedRigsAsync("load", "delay-2")).Affected.Count}");
                using (var file = await client.ExportGearAsync(null, "csv"))
                using (var reader = new System.IO.StreamReader(file.Stream))
                    said.Add((await reader.ReadLineAsync()).Split(',')[0]);
                await client.RemoveGearAsync("load", "delay-2", $"\"{measured.Revision}\"");
                await client.RemoveGearAsync("load", "drive-3", "\"1\"");

                var health = await client.HealthAsync();
                said.Add($"{(await client.ListRigsAsync()).Rigs.Count} {health.Status} {health.Store.IsOpen}");
                return said;
            }
        }
        """;

    [Theory]
    [InlineData("openapi")]
    [InlineData("openapi-3.0")]
    public async Task A_generated_client_works(string name)
    {
        var document = await NSwag.OpenApiDocument.FromJsonAsync(await shared.Host.Client.GetStringAsync($"/api/{name}.json", RunningHost.Stop), RunningHost.Stop);
        var settings = new CSharpClientGeneratorSettings { ClassName = "LoadmarkClient", UseBaseUrl = true, InjectHttpClient = true };
        settings.CSharpGeneratorSettings.Namespace = "Generated";

        // Of the two libraries that this generator knows, the one that reads words with a dash, such as centre-negative, as it writes them itself.
        settings.CSharpGeneratorSettings.JsonLibrary = NJsonSchema.CodeGeneration.CSharp.CSharpJsonLibrary.NewtonsoftJson;
        var code = new CSharpClientGenerator(document, settings).GenerateFile();

        var ask = Compile(code).GetType("User")!.GetMethod("AskAsync")!.CreateDelegate<Func<HttpClient, string, string, Task<List<string>>>>();
        var examples = Repository.PathOf("src", "Loadmark", "Api", "Examples");
        var rig = await File.ReadAllTextAsync(Path.Combine(examples, "board.rig.yaml"), RunningHost.Stop);
        var prices = await File.ReadAllTextAsync(Repository.PathOf("examples", "harbour-row.prices.csv"), RunningHost.Stop);
        using var http = shared.Host.NewClient();
        Assert.Equal(
            ["CentreNegative 0.3", "Good board.rig.yaml 2 0.15", "Optimal 2 True", "Runs 20 3", "True True", "Optimal 1", "* Understudy, second chair",
             "2 changing it", "412 2 /api/problems/conflict", "422 1 True", "True 1", "Load 2 9V DC 310mA", "412 2 9V DC 310mA", "0.212 True Running", "1 New", "drive-3 0",
             "tag", "0 Well True"],
            await ask(http, rig, prices));
    }

    private static Assembly Compile(string client)
    {
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Select(static path => MetadataReference.CreateFromFile(path));
        var compilation = CSharpCompilation.Create(
            "GeneratedClient",
            [CSharpSyntaxTree.ParseText(client, cancellationToken: RunningHost.Stop), CSharpSyntaxTree.ParseText(User, cancellationToken: RunningHost.Stop)],
            references,
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary));
        using var output = new MemoryStream();
        var result = compilation.Emit(output, cancellationToken: RunningHost.Stop);
        if (!result.Success && Environment.GetEnvironmentVariable("LOADMARK_KEEP") is { } keep)
            File.WriteAllText(keep, client);
        Assert.True(result.Success, string.Join('\n', result.Diagnostics.Where(static one => one.Severity == DiagnosticSeverity.Error).Take(12)));
        return Assembly.Load(output.ToArray());
    }
}
