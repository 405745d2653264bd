using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Metering;
using Loadmark.Web.RequestIds;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.XmlEncryption;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Localization;
using MudBlazor.Services;

namespace Loadmark.Web.Hosting;

/// <summary>What the page needs of its host.</summary>
public static class PageServices
{
    /// <summary>A page sends what is typed and pasted in one message: two thousand labels, or a rig's whole text.</summary>
    private const long LongestMessage = 2 * 1024 * 1024;

    /// <summary>Adds the page.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="store">What is kept, opened.</param>
    /// <param name="opening">What opening them found.</param>
    /// <param name="limits">How much the page may ask of the machine.</param>
    public static IServiceCollection AddPage(this IServiceCollection services, Store store, StoreOpening opening, PageLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        services.AddPageTexts();
        services.AddRazorComponents().AddInteractiveServerComponents(static (CircuitOptions options) =>
        {
            options.DisconnectedCircuitMaxRetained = 20;
            options.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(10);
        }).AddHubOptions(static options => options.MaximumReceiveMessageSize = LongestMessage);
        services.AddMudServices();
        services.AddAntiforgery();

        services.AddDataProtection();
        services.Configure<KeyManagementOptions>(
            static keys => (keys.XmlRepository, keys.XmlEncryptor) = (new PassingKeys(), new NullXmlEncryptor()));
        services.TryAddSingleton(TimeProvider.System);
        services.AddSingleton<RequestIdSource>();
        services.AddScoped<PageRequestId>();
        services.AddScoped<CircuitHandler, PageRequestIdHandler>();
        services.AddScoped<CircuitHandler, InboundOrder>();
        services.AddScoped<BenchMeter>();
        services.AddSingleton(store);
        services.AddSingleton(store.Rigs);
        services.AddSingleton(store.Acceptances);
        services.AddSingleton<LibraryCache>();
        services.AddSingleton<LibraryEditor>();
        services.AddSingleton<AffectedRigs>();
        services.AddSingleton(opening);
        services.AddSingleton(limits);
        services.AddSingleton(new SolveGate(limits.SolvesAtOnce));
        return services;
    }

    /// <summary>Adds the texts of the page.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddPageTexts(this IServiceCollection services) =>
        services.AddLocalization().AddTransient<IStringLocalizer<PageText>, MarkedPageText>();
}
